/**
 * Typical budgets of the stress at Ottersleigh, for each change and each bar that is tried.
 * Units: standard uncertainties as shares of the stress.
 * Source: core/plan, by its own sources.
 */
import { typicalBudget } from '../../../core/plan.ts';
import { BARS_TRIED, CHANGED, CHANGES, FIRST_PLAN, MADE_UP } from './plans.ts';

/** The budgets of a change, bar by bar. */
const ofChange = (change: (typeof CHANGES)[number]) =>
  BARS_TRIED.map((gaugeLength) =>
    typicalBudget({ ...FIRST_PLAN, ...CHANGED[change], gaugeLength }, MADE_UP.times, MADE_UP.seed),
  );

/** By the name of the change, in the order of the bars. */
export const typical = Object.fromEntries(CHANGES.map((change) => [change, ofChange(change)]));
