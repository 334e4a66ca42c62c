/**
 * What makes the stress uncertain, cause by cause, and what becomes of it when one thing is done better.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { defaults } from '../../models/define-model.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { Bars, CAUSE_WORDS, ranked, SHORT_WORDS } from './budget/Bars.tsx';
import { uncertainty } from './budget/causes.ts';
import { budgetLayout } from './budget/layout.ts';
import { MADE_UP } from './budget/plans.ts';
import { aFewHundredths } from './model.ts';
import type { Figure, State } from './state.ts';

const say = teller(aFewHundredths);

const PLAN_WORDS = {
  none: 'One series',
  finerDial: 'A dial twice as fine',
  threeSeries: 'Three series',
  laterStart: 'A start at a tenth of the load',
} as const;

/** Where the reader's own unit system begins. */
function atStart(system: State['system']) {
  const { barLength, change } = defaults(aFewHundredths, system);
  return uncertainty(barLength, change);
}

function finding(state: State): string {
  const { barLength, change } = state.values;
  const [largest] = ranked(uncertainty(barLength, change).parts);
  const plan = `${PLAN_WORDS[change]} on ${say(state, 'barLength')}`;
  return `${plan}: ±\u00a0${say(state, 'whole')}, mostly from ${largest ? SHORT_WORDS[largest] : ''}.`;
}

function description(state: State): string {
  const { parts } = uncertainty(state.values.barLength, state.values.change);
  const lines = ranked(parts).map(
    (cause) => `${CAUSE_WORDS[cause]} ± ${formatQuantity(parts[cause], 'stress', state.system)}`,
  );
  return `Bars on one scale. All together: ± ${say(state, 'whole')}. By themselves, the largest first: ${lines.join(', ')}.`;
}

function notes(state: State): readonly string[] {
  const start = defaults(aFewHundredths, state.system);
  const bar = say({ ...state, values: { ...state.values, ...start } }, 'barLength');
  return [
    `${say(state, 'rigStress')} at Ottersleigh; bars: ± at 95 %, each cause alone`,
    `dashed: one series on ${bar}`,
    `scatter: the middle of ${MADE_UP.times} simulated measurements`,
  ];
}

function Drawing(state: State) {
  const layout = budgetLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <Bars state={state} layout={layout} start={atStart(state.system)} />
    </Sheet>
  );
}

/** The third figure of the lesson `a-few-hundredths`. */
export const figure: Figure = { finding, description, notes, Drawing };
