/**
 * The band running onto the wheel, from the side: its thickness drawn larger, its tone by the stress; on the wheel the
 * outer face is pulled and the inner pressed. The pull at its end and the wheel's size can be dragged.
 * Units: SI in the state; drawing units otherwise.
 */
import { ArrowHead } from '../../../figures/dimension.tsx';
import { Handle } from '../../../figures/Handle.tsx';
import { turned } from '../../../figures/turned.ts';
import { roundTheWheel } from '../model.ts';
import type { State } from '../state.ts';
import { BentBand, StraightBand } from './DrawnBand.tsx';
import type { BendLayout } from './layout.ts';

interface PartProps {
  readonly state: State;
  readonly layout: BendLayout;
}

const CUT = 1 / 11; // of a turn from where the band meets the wheel
const CUT_ASIDE = 60; // from there where it stays straight

/** Where the band is cut open: a line across it, and the letter that names the cut. */
function CutMark({ state, layout }: PartProps) {
  const { meets, rim, perLength, perThickness } = layout.wheel;
  const { over, wheelDiameter, thickness } = state.values;
  const isWheel = over === 'wheel';
  const radius = isWheel ? (wheelDiameter / 2) * perLength : 0;
  const outer = radius + thickness * perThickness;
  const centre = { x: isWheel ? meets : meets + CUT_ASIDE, y: rim + radius };
  const at = (reach: number) => turned(centre, reach, isWheel ? CUT : 0);
  const beside = isWheel ? outer + 16 : radius - 18; // where it is straight there is more room below
  const [from, to, letter] = [at(radius - 6), at(outer + 6), at(beside)];
  return (
    <g>
      <path class="outline" d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />
      <text class="numeral" x={letter.x} y={letter.y + 5} text-anchor="middle">
        A
      </text>
    </g>
  );
}

/** The pull on the strand, an arrow as long as the tension, with the grip at its tip. */
function Pull({ state, layout }: PartProps) {
  const { rim, perThickness } = layout.wheel;
  const { start, perStress } = layout.pull;
  const { tension, thickness } = state.values;
  const y = rim - (thickness * perThickness) / 2;
  const tip = start - tension * perStress;
  return (
    <g data-sym="tension">
      <path class="hand-line" d={`M${start} ${y}H${tip + 8}`} />
      <ArrowHead x={tip} y={y} angle={180} ink="hand" size={11} />
      <Handle
        model={roundTheWheel}
        state={state}
        x={tip - 4}
        y={y}
        input="tension"
        label="Pull on the band"
        drag="x"
        perUnit={-1 / perStress}
      />
    </g>
  );
}

/** Band, wheel, and what can be dragged. */
export function WheelAndBand({ state, layout }: PartProps) {
  const { meets, rim, perLength, right, bottom } = layout.wheel;
  const { over, wheelDiameter } = state.values;
  const clip = `${state.idPrefix}-seen`;
  return (
    <g>
      <clipPath id={clip}>
        <rect x={0} y={0} width={right} height={bottom} />
      </clipPath>
      <g clip-path={`url(#${clip})`}>
        {over === 'wheel' ? (
          <BentBand state={state} layout={layout} />
        ) : (
          <StraightBand state={state} layout={layout} />
        )}
      </g>
      <CutMark state={state} layout={layout} />
      <Pull state={state} layout={layout} />
      {over === 'wheel' && (
        <Handle
          model={roundTheWheel}
          state={state}
          x={meets}
          y={rim + (wheelDiameter / 2) * perLength}
          input="wheelDiameter"
          label="Move the wheel’s center"
          drag="y"
          perUnit={2 / perLength}
        />
      )}
    </g>
  );
}
