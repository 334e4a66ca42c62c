/**
 * A day at the mill: how warm its parts are, and what that does to the tension under three tensioners.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { dayLayout } from './day/layout.ts';
import { Temperatures } from './day/Temperatures.tsx';
import { Tensions } from './day/Tensions.tsx';
import { TimeAxis } from './day/TimeAxis.tsx';
import { whenItWarms } from './model.ts';
import type { Figure, State } from './state.ts';

const say = teller(whenItWarms);

/** How far a stress is from the setting, in words. */
function fromSetting(state: State, stress: number): string {
  const change = stress - state.values.setting;
  const size = formatQuantity(Math.abs(change), 'stress', state.system, { digits: 2 });
  if (Math.abs(change) < 0.5e6) return 'as it was set';
  return `${size} ${change < 0 ? 'below' : 'above'} the setting`;
}

function finding(state: State): string {
  const { firstLoss, lunchStress } = state.values;
  const lunch = `at lunch it is ${fromSetting(state, lunchStress)}.`;
  if (firstLoss === 0) return `The first hour takes nothing of ${say(state, 'setting')}; ${lunch}`;
  return `The first hour takes ${say(state, 'firstLoss', 2)}, ${say(state, 'firstShare', 2)}; ${lunch}`;
}

function description(state: State): string {
  const { lunchStress, duskStress, frostStress } = state.values;
  return `A day from seven in the morning to seven the next. Above, how much warmer than at the setting: the band ${say(state, 'bandWarm')} while it cuts, the frame up to ${say(state, 'frameWarm')} in the sun, the wheels up to ${say(state, 'wheelsWarm')}. Below, the tension: on the screw ${say(state, 'firstStress', 3)} after the first hour, then at lunch ${fromSetting(state, lunchStress)}, once the band has cooled ${fromSetting(state, duskStress)}, in the night’s frost ${fromSetting(state, frostStress)}; with a spring ${say(state, 'firstStressSpring', 3)} after the first hour; under oil at constant pressure always ${say(state, 'setting')}.`;
}

function notes({ system }: State): readonly string[] {
  const lent = formatQuantity(whenItWarms.constants['springStiffness'] ?? 0, 'stiffness', system, {
    digits: 2,
  });
  return [
    'above, warmer than at the setting: frame thick, wheels dashed',
    'below, tension in percent of the setting',
    `an assumed day at Ottersleigh (invented), spring of ${lent}; night drawn shorter`,
  ];
}

function Drawing(state: State) {
  const layout = dayLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <TimeAxis layout={layout} />
      <Tensions state={state} layout={layout} />
      <Temperatures state={state} layout={layout} />
    </Sheet>
  );
}

/** The first figure of the lesson `when-it-warms`. */
export const figure: Figure = { finding, description, notes, Drawing };
