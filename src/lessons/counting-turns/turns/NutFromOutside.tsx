/**
 * The nut seen along its screw: the arm that the reader turns, and a spiral that has wound up as many times as the nut
 * was turned; thin while only slack was taken up.
 * Units: drawing units.
 */

import { teller } from '../../../figures/teller.ts';
import { turned } from '../../../figures/turned.ts';
import { NUT_INPUTS } from '../inputs.ts';
import { countingTurns } from '../model.ts';
import { NutGrip } from '../NutGrip.tsx';
import type { CountingLayout, CountingPartProps } from './layout.ts';

const say = teller(countingTurns);
const POINTS_PER_TURN = 48;
const HUB = 0.2; // share of the reach at which the spiral starts
const RIM = 0.84;
const CLOSE_WOUND = 5; // turns from which the spiral is drawn with a thin line

/** The spiral from one number of turns to another; it reaches the rim at `most` turns. */
function spiral({ nut }: CountingLayout, from: number, to: number, most: number): string {
  const count = Math.max(1, Math.ceil((to - from) * POINTS_PER_TURN));
  const points = Array.from({ length: count + 1 }, (_, place) => {
    const turns = from + ((to - from) * place) / count;
    const radius = nut.reach * (HUB + ((RIM - HUB) * turns) / most);
    const { x, y } = turned(nut, radius, turns);
    return `${x.toFixed(2)} ${y.toFixed(2)}`;
  });
  return `M${points.join('L')}`;
}

function Words({ state, layout }: CountingPartProps) {
  const { x, y, reach } = layout.nut;
  const left = x + reach + 34;
  return (
    <g>
      <text class="hand" x={left} y={y - 4} data-sym="turns">
        {say(state, 'turns')}
      </text>
      <text class="hand" x={left} y={y + 18} data-sym="torque">
        {say(state, 'torque')}
      </text>
    </g>
  );
}

/** Nut, spiral, and the grip that turns it. */
export function NutFromOutside(props: CountingPartProps) {
  const { state, layout } = props;
  const { x, y, reach } = layout.nut;
  const { tensioner, turns, slackTurns } = state.values;
  if (tensioner === 'oil') return null;
  const input = NUT_INPUTS[tensioner];
  const { max } = countingTurns.inputs[input];
  const end = turned(layout.nut, reach, turns);
  return (
    <g>
      <circle class="centre" cx={x} cy={y} r={reach} />
      <path class="construction" d={spiral(layout, 0, slackTurns, max)} data-sym="slackTravel" />
      {turns > slackTurns && (
        <path
          class={max > CLOSE_WOUND ? 'hand-thin' : 'hand-line'}
          d={spiral(layout, slackTurns, turns, max)}
        />
      )}
      <circle class="hand-line paper-fill" cx={x} cy={y} r={reach * HUB * 0.8} />
      <path class="hand-line" d={`M${x} ${y}L${end.x} ${end.y}`} />
      {!layout.narrow && <Words {...props} />}
      <NutGrip state={state} nut={layout.nut} turns={turns} input={input} label="Turn the nut" />
    </g>
  );
}
