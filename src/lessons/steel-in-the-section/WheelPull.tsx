/**
 * Two strands pull at one wheel: the arrows are to scale with each other, so the eye sees that the wheel feels both.
 * Units: SI in the state; drawing units otherwise.
 */

import { ArrowHead } from '../../figures/dimension.tsx';
import { formatQuantity } from '../../units/format-quantity.ts';
import type { SectionLayout } from './section-layout.ts';
import type { State } from './state.ts';

/** The wheel, its two strands, and the force that holds it. */
export function WheelPull({
  state,
  layout,
}: {
  readonly state: State;
  readonly layout: SectionLayout;
}) {
  const { wheel, perNewton } = layout;
  const { x, y, radius } = wheel;
  const { strandForce, wheelForce } = state.values;
  const pull = strandForce * perNewton;
  const hold = wheelForce * perNewton;
  const strand = formatQuantity(strandForce, 'force', state.system);
  return (
    <g>
      <circle class="outline" cx={x} cy={y} r={radius} />
      <path
        class="centre"
        d={`M${x - radius - 8} ${y}H${x + radius + 8}M${x} ${y - radius - 8}V${y + radius + 8}`}
      />
      {[-radius, radius].map((side) => (
        <g key={side} data-sym="strandForce">
          <path class="steel-line" d={`M${x} ${y + side}H${x - pull + 8}`} />
          <ArrowHead x={x - pull} y={y + side} angle={180} ink="steel" size={11} />
          <text class="steel halo" x={x - 4} y={y + side + (side < 0 ? -9 : 20)} text-anchor="end">
            {strand}
          </text>
        </g>
      ))}
      <g data-sym="wheelForce">
        <path class="steel-line" d={`M${x} ${y}H${x + hold - 8}`} />
        <ArrowHead x={x + hold} y={y} angle={0} ink="steel" size={11} />
        <text class="steel halo" x={x + 10} y={y - 9}>
          {formatQuantity(wheelForce, 'force', state.system)}
        </text>
      </g>
      <text class="note" x={x} y={y + radius + 44} text-anchor="middle">
        two strands, one wheel
      </text>
    </g>
  );
}
