/**
 * Both nuts seen along their screws: one arm that the reader turns for both, and the arc that it has gone.
 * Units: SI in the state; drawing units otherwise; the handle's `perUnit` in turns per radian.
 */
import { Handle } from '../../../figures/Handle.tsx';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { countingTurns } from '../model.ts';
import type { State } from '../state.ts';
import type { PairLayout } from './layout.ts';

const ARC = 0.6; // of the reach
const HUB = 0.16;

interface DialProps {
  readonly state: State;
  readonly layout: PairLayout;
}

/** The way of the arm from upright, clockwise; a whole turn is a whole circle. */
function arc({ x, y, reach }: PairLayout['dial'], turns: number): string {
  const radius = ARC * reach;
  const at = (part: number) => {
    const angle = 2 * Math.PI * turns * part;
    return `${x + radius * Math.sin(angle)} ${y - radius * Math.cos(angle)}`;
  };
  return `M${at(0)}A${radius} ${radius} 0 0 1 ${at(0.5)}A${radius} ${radius} 0 0 1 ${at(1)}`;
}

/** The arm, its arc, the grip; on a wide page the number of turns under it. */
export function TurnDial({ state, layout: { dial, narrow } }: DialProps) {
  const { turnsBoth } = state.values;
  const { x, y, reach } = dial;
  const angle = 2 * Math.PI * turnsBoth;
  const end = { x: x + reach * Math.sin(angle), y: y - reach * Math.cos(angle) };
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
      <Handle
        {...end}
        model={countingTurns}
        state={state}
        input="turnsBoth"
        label="Turn both nuts"
        drag="turn"
        perUnit={1 / (2 * Math.PI)}
        centreX={x}
        centreY={y}
        angle={360 * turnsBoth}
      />
    </g>
  );
}
