/**
 * The section of the chosen band, true to scale, and how hard the whole of it pulls, as an arrow.
 * Units: SI in the state; drawing units otherwise.
 */
import { ForceArrow } from '../../../figures/ForceArrow.tsx';
import { Hatch } from '../../../figures/Hatch.tsx';
import { teller } from '../../../figures/teller.ts';
import { secondOpinion } from '../model.ts';
import type { State } from '../state.ts';
import { BANDS } from '../strip.ts';
import type { PluckLayout } from './layout.ts';

const say = teller(secondOpinion);
const UNDER = 20; // drawing units from what is drawn to its words

interface PartProps {
  readonly state: State;
  readonly layout: PluckLayout;
}

/** Body, hatched, and teeth, which carry nothing; its sizes under it. */
function Section({ state, layout }: PartProps) {
  const { left, y, perLength } = layout.section;
  const { bodyWidth, widthOverTeeth, thickness } = BANDS[state.values.band];
  const [body, tip] = [left + bodyWidth * perLength, left + widthOverTeeth * perLength];
  const half = (thickness * perLength) / 2;
  const rectangle = { x: left, y: y - half, width: body - left, height: 2 * half };
  return (
    <g data-sym="area">
      <path class="thin" d={`M${body} ${y - half}L${tip} ${y}L${body} ${y + half}`} />
      <Hatch id={`${state.idPrefix}-section`} {...rectangle} spacing={4} />
      <rect class="thin" {...rectangle} />
      <text x={left} y={y + half + UNDER}>
        {state.narrow ? '' : 'section '}
        {say(state, 'bodyWidth')} × {say(state, 'thickness')}
      </text>
    </g>
  );
}

/** The pull of the whole section. */
function Pull({ state, layout }: PartProps) {
  const { left, y, perForce } = layout.pull;
  return (
    <g data-sym="strandPull">
      <ForceArrow x={left} y={y} length={state.values.strandPull * perForce} ink="steel" />
      <text class="steel" x={left} y={y + UNDER + 3}>
        pulls {say(state, 'strandPull')}
      </text>
    </g>
  );
}

/** Section and pull. */
export function BandAcross(props: PartProps) {
  return (
    <g>
      <Section {...props} />
      <Pull {...props} />
    </g>
  );
}
