/**
 * The load-bearing steel as one round rod in section, to the scale of the band beside it, and the reader's guess of it
 * on the same level.
 * Units: SI in the state; drawing units otherwise.
 */

import { teller } from '../../figures/teller.ts';
import { steelInTheSection } from './model.ts';
import type { SectionLayout } from './section-layout.ts';
import type { State } from './state.ts';

interface RoundRodProps {
  readonly state: State;
  readonly layout: SectionLayout;
}

const say = teller(steelInTheSection);
const SPACING = 5;

/** Hatching at 45 degrees inside a circle: chords of it. */
function chords(x: number, y: number, radius: number): string {
  const count = Math.floor(radius / SPACING);
  const lines = Array.from({ length: 2 * count + 1 }, (_, place) => {
    const off = (place - count) * SPACING;
    const half = Math.sqrt(Math.max(0, radius ** 2 - off ** 2));
    const [midX, midY] = [x + off * Math.SQRT1_2, y + off * Math.SQRT1_2];
    const reach = half * Math.SQRT1_2;
    return `M${midX - reach} ${midY + reach}L${midX + reach} ${midY - reach}`;
  });
  return lines.join('');
}

/** Rod and guess, one inside the other, on one floor. */
export function RoundRod({ state, layout }: RoundRodProps) {
  const { x, floor } = layout.rod;
  const { guess, narrow } = state;
  const radius = (state.values.rodDiameter * layout.perMetre) / 2;
  const guessed = ((guess ?? 0) * layout.perMetre) / 2;
  const reach = narrow ? 46 : 120;
  return (
    <g data-sym="rodDiameter">
      <circle class="outline steel-wash" cx={x} cy={floor - radius} r={radius} />
      <path class="thin" d={chords(x, floor - radius, radius)} />
      <path class="axis" d={`M${x - reach} ${floor}H${x + reach}`} />
      <text class="steel halo" x={x} y={floor + 20} text-anchor="middle">
        {narrow ? 'rod ' : 'as one round rod '}
        {say(state, 'rodDiameter', 2)}
      </text>
      {guess !== undefined && (
        <g>
          <circle
            class="hand-line"
            stroke-dasharray="6 4"
            cx={x}
            cy={floor - guessed}
            r={guessed}
          />
          <text
            class="hand halo"
            x={x}
            y={floor - 2 * Math.max(radius, guessed) - 9}
            text-anchor="middle"
          >
            your guess
          </text>
        </g>
      )}
    </g>
  );
}
