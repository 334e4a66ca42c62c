/**
 * What a measurement will reach, before anyone goes out: it is made many times over, with toes and
 * noise as on the practice bench, and its interval looked at each time.
 * Units: SI only (m, Pa); half-widths are shares of the stress.
 * Source: derived here; toes and noise as in bench/mill.ts, the interval as on the worksheet.
 */
import { assertBetween, assertPositive, assertWhole } from './assert.ts';
import type { PlanOutcome } from './plan/changes.ts';
import { planLimits } from './plan/limits.ts';
import { type MeasurementPlan, planSimulator } from './plan/simulator.ts';

export { planLimits } from './plan/limits.ts';

import { randomSource } from './random.ts';

export {
  bestFirst,
  type ChangeablePlan,
  type ChangedPlan,
  type PlanChange,
  type PlanOutcome,
  planChanges,
  planRepeats,
  startingShare,
} from './plan/changes.ts';
export type { MeasurementPlan } from './plan/simulator.ts';
export { type TypicalBudget, typicalBudget } from './plan/typical-budget.ts';

const MOST_REPEATS = 100_000;

function assertLoads(loads: readonly number[], steps: number): void {
  assertWhole('loads.length', loads.length, steps, steps);
  for (const load of loads) assertBetween('loads', load, 0, 1);
}

function assertPlan(plan: MeasurementPlan): void {
  assertPositive('gaugeLength', plan.gaugeLength, 'm');
  assertPositive('graduation', plan.graduation, 'm');
  assertPositive('readTo', plan.readTo, 'm');
  assertBetween('firstShare', plan.firstShare, ...planLimits.firstShare);
  assertWhole('steps', plan.steps, ...planLimits.steps);
  assertWhole('series', plan.series, ...planLimits.series);
  if (plan.loads) assertLoads(plan.loads, plan.steps);
  assertPositive('stressAtTop', plan.stressAtTop, 'Pa');
  assertPositive('youngsModulus', plan.youngsModulus, 'Pa');
}

/** The value that a share of a sorted list is at or below; undefined where it is without end. */
function pointOf(sorted: readonly number[], share: number): number | undefined {
  const value = sorted[Math.ceil(share * sorted.length) - 1] as number;
  return Number.isFinite(value) ? value : undefined;
}

/**
 * What a plan reaches, over so many measurements; the same seed gives the same ones.
 * @throws RangeError unless the plan's lengths, stress and modulus are above 0, firstShare is 0 to 0.9, steps 6 to 30,
 * series 1 to 5, loads 0 to 1 and one for each step, and repeats 1 to 100 000
 */
export function planOutcome(plan: MeasurementPlan, repeats: number, seed: number): PlanOutcome {
  assertPlan(plan);
  assertWhole('repeats', repeats, 1, MOST_REPEATS);
  const simulate = planSimulator(plan);
  const random = randomSource(seed);
  const widths = Array.from({ length: repeats }, () => simulate(random)).sort((a, b) => a - b);
  return {
    median: pointOf(widths, 0.5),
    nineOfTen: pointOf(widths, 0.9),
    givesStress: widths.filter(Number.isFinite).length / repeats,
  };
}
