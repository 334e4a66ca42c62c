/**
 * Three thermometers and the loop: who gains on whom, and what is left for the tension.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { Account } from './loop/Account.tsx';
import { loopLayout } from './loop/layout.ts';
import { Thermometers } from './loop/Thermometers.tsx';
import { WarmLoop } from './loop/WarmLoop.tsx';
import { whenItWarms } from './model.ts';
import { signedDegrees } from './signed.ts';
import type { Figure, State } from './state.ts';

const say = teller(whenItWarms);
const NOTHING = 0.1e6; // Pa, far below what anyone can measure

function finding(state: State): string {
  const { changeNow, slackNow } = state.values;
  const size = formatQuantity(Math.abs(changeNow), 'stress', state.system, { digits: 2 });
  const length = formatQuantity(Math.abs(slackNow), 'stretch', state.system);
  if (Math.abs(changeNow) < NOTHING)
    return `Everything grows in step: the tension stays at ${say(state, 'setting')}.`;
  if (changeNow < 0)
    return `The band outgrows frame and wheels by ${length} at the wheel: it loses ${size}.`;
  return `The band is ${length} too short for frame and wheels: it gains ${size}.`;
}

function description(state: State): string {
  const { bandNow, frameNow, wheelsNow } = state.values;
  const degrees = (value: number) => signedDegrees(value, state.system);
  return `The mill’s loop with its growth drawn larger, and three thermometers: band ${degrees(bandNow)}, frame ${degrees(frameNow)}, wheels ${degrees(wheelsNow)}, since the setting. At the movable wheel the band gains ${say(state, 'bandGain')}, the frame takes up ${say(state, 'frameTakes')}, the wheels ${say(state, 'wheelsTake')}; ${say(state, 'slackNow')} is left.`;
}

function notes({ narrow }: State): readonly string[] {
  return [
    `growth drawn × ${loopLayout(narrow).mill.times}; dashed red: how far the band would reach by itself`,
    'Ottersleigh (invented), a screw on its real frame, all of steel',
  ];
}

function Drawing(state: State) {
  const layout = loopLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <WarmLoop state={state} layout={layout} />
      <Thermometers state={state} layout={layout} />
      <Account state={state} layout={layout} />
    </Sheet>
  );
}

/** The second figure of the lesson `when-it-warms`. */
export const figure: Figure = { finding, description, notes, Drawing };
