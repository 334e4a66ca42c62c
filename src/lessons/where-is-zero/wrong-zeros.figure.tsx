/**
 * Two wrong zeros on one drawing, beside the true one: the dial set to zero on the slack band, and set when the band
 * already pulls.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { whereIsZero } from './model.ts';
import type { Figure, State } from './state.ts';
import { wrongLayout } from './wrong/layout.ts';
import { ZerosPlot } from './wrong/ZerosPlot.tsx';
import { errorText, ZerosTable } from './wrong/ZerosTable.tsx';

const say = teller(whereIsZero);

function finding(state: State): string {
  const { slackError, setError } = state.values;
  const slack = `Set to zero on the slack band, the dial reads ${errorText(slackError, state)}`;
  return `${slack}. Set at ${say(state, 'setAt')}, it reads ${errorText(setError, state)}.`;
}

function description(state: State): string {
  const { slackError, setError } = state.values;
  return `The dial over torque, first curved, then straight. From the slack band’s level the last reading means ${say(state, 'slackTopStress')} (${errorText(slackError, state)}), from the true zero ${say(state, 'topStress')}, from the level at ${say(state, 'setAt')} ${say(state, 'setTopStress')} (${errorText(setError, state)}).`;
}

function notes(state: State): readonly string[] {
  const side = state.values.side === 'hollow' ? 'hollow' : 'outer';
  return [`bar on the ${side} side; stress at ${say(state, 'topTorque')}`];
}

function Drawing(state: State) {
  return (
    <Sheet idPrefix={state.idPrefix} size={wrongLayout(state.narrow)}>
      <ZerosPlot state={state} />
      <ZerosTable state={state} />
    </Sheet>
  );
}

/** The figure of the wrong zeros. */
export const figure: Figure = { finding, description, notes, Drawing };
