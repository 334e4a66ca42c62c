/**
 * Both nuts seen along their screws: one arm that the reader turns for both, and the arc that it has gone.
 * Units: SI in the state; drawing units otherwise.
 */
import { turned } from '../../../figures/turned.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { NutGrip } from '../NutGrip.tsx';
import type { State } from '../state.ts';
import type { PairLayout } from './layout.ts';

const ARC = 0.6; // of the reach
const HUB = 0.16;

interface DialProps {
  readonly state: State;
  readonly layout: PairLayout;
}

/** The way of the arm from upright, clockwise; a whole turn is a whole circle. */
function arc(dial: PairLayout['dial'], turns: number): string {
  const radius = ARC * dial.reach;
  const at = (part: number) => {
    const { x, y } = turned(dial, radius, turns * part);
    return `${x} ${y}`;
  };
  return `M${at(0)}A${radius} ${radius} 0 0 1 ${at(0.5)}A${radius} ${radius} 0 0 1 ${at(1)}`;
}

/** The arm, its arc, the grip; on a wide page the number of turns under it. */
export function TurnDial({ state, layout: { dial, narrow } }: DialProps) {
  const { turnsBoth } = state.values;
  const { x, y, reach } = dial;
  const end = turned(dial, reach, turnsBoth);
  return (
    <g data-sym="turnsBoth">
      <circle class="centre" cx={x} cy={y} r={reach} />
      <path class="hand-line" d={arc(dial, turnsBoth)} />
      <path class="hand-line" d={`M${x} ${y}L${end.x} ${end.y}`} />
      <circle class="hand-line paper-fill" cx={x} cy={y} r={HUB * reach} />
      {!narrow && (
        <g>
          <text class="hand" x={x} y={y - reach - 22} text-anchor="middle">
            both nuts
          </text>
          <text class="hand" x={x} y={y + reach + 34} text-anchor="middle">
            {formatQuantity(turnsBoth, 'turns', state.system)}
          </text>
        </g>
      )}
      <NutGrip
        state={state}
        nut={dial}
        turns={turnsBoth}
        input="turnsBoth"
        label="Turn both nuts"
      />
    </g>
  );
}
