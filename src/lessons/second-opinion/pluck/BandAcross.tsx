/**
 * The section of the chosen band, true to scale, and how hard the whole of it pulls.
 * Units: SI in the state; drawing units otherwise.
 */
import { teller } from '../../../figures/teller.ts';
import { secondOpinion } from '../model.ts';
import type { State } from '../state.ts';
import { BANDS } from '../strip.ts';
import type { PluckLayout } from './layout.ts';

const say = teller(secondOpinion);

interface BandAcrossProps {
  readonly state: State;
  readonly layout: PluckLayout;
}

/** Body and teeth of the section, its sizes and its pull under it. */
export function BandAcross({ state, layout }: BandAcrossProps) {
  const { left, y, perLength } = layout.section;
  const { bodyWidth, widthOverTeeth, thickness } = BANDS[state.values.band];
  const [body, tip] = [left + bodyWidth * perLength, left + widthOverTeeth * perLength];
  const half = (thickness * perLength) / 2;
  const size = `${say(state, 'bodyWidth')} × ${say(state, 'thickness')}`;
  return (
    <g>
      <path class="thin" d={`M${body} ${y - half}L${tip} ${y}L${body} ${y + half}`} />
      <rect class="ink-fill" x={left} y={y - half} width={body - left} height={2 * half} />
      <g transform={`translate(${left} ${y + half + 20})`}>
        <text>{state.narrow ? size : `section ${size}`}</text>
        <text class="steel" x={state.narrow ? 120 : 230} data-sym="strandPull">
          pull {say(state, 'strandPull')}
        </text>
      </g>
    </g>
  );
}
