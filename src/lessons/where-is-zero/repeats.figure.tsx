/**
 * Many simulated series, each with its zero placed in two ways: how far off they are, as two histograms on one scale.
 * What the reader has asked for beyond the first lot shows as it comes.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { Sheet } from '../../figures/Sheet.tsx';
import { formatQuantity } from '../../units/format-quantity.ts';
import { ErrorAxis } from './repeats/ErrorAxis.tsx';
import { Histogram, RULE_WORDS } from './repeats/Histogram.tsx';
import { repeatsLayout } from './repeats/layout.ts';
import type { Rule } from './repeats/rules.ts';
import { simulated } from './repeats/simulated.ts';
import { typicalError } from './repeats/tally.ts';
import type { Figure, State } from './state.ts';

const tallyFor = ({ values }: State) => simulated(values.repeats);

function error(state: State, rule: Rule): string {
  return formatQuantity(typicalError(tallyFor(state), rule), 'stretch', state.system);
}

function finding(state: State): string {
  const { repeats } = tallyFor(state);
  const { rule } = state.values;
  const count = formatQuantity(repeats, 'count', state.system);
  return `In ${count} simulated series the zero is typically ${error(state, rule)} off ${FOUND[rule]}, and ${error(state, 'full')} from all readings.`;
}

const FOUND = {
  needle: 'if you watch the hand',
  ruler: 'with a ruler on the graph',
  classroom: 'by the classroom rule',
} as const satisfies Readonly<Record<State['values']['rule'], string>>;

function description(state: State): string {
  const { rule } = state.values;
  return `Two histograms of the error of the zero. ${RULE_WORDS[rule]}: typically ${error(state, rule)}. All readings: typically ${error(state, 'full')}, closer around the true zero.`;
}

function notes(state: State): readonly string[] {
  const { repeats } = tallyFor(state);
  const said = (value: number) => formatQuantity(value, 'count', state.system);
  const missing = Math.max(0, Math.round(state.values.repeats) - repeats);
  return [
    'each series with another coil set, dial and wrench',
    'typical error: root mean square',
    'how an eye judges is assumed',
    ...(missing > 0 ? [`${said(missing)} more are being simulated`] : []),
  ];
}

function Drawing(state: State) {
  const tally = tallyFor(state);
  const { rule } = state.values;
  const most = Math.max(...tally.rules[rule].bins, ...tally.rules.full.bins);
  return (
    <Sheet idPrefix={state.idPrefix} size={repeatsLayout(state.narrow)}>
      <ErrorAxis state={state} />
      <Histogram state={state} tally={tally} rule={rule} place={0} most={most} />
      <Histogram state={state} tally={tally} rule="full" place={1} most={most} />
    </Sheet>
  );
}

/** The figure of the repeats. */
export const figure: Figure = { finding, description, notes, Drawing };
