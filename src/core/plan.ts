/**
 * What a measurement will reach, before anyone goes out: it is made many times over, with toes and
 * noise as on the practice bench, and its interval looked at each time.
 * Units: SI only (m, Pa); half-widths are shares of the stress.
 * Source: derived here; toes and noise as in bench/mill.ts, the interval as on the worksheet.
 */
import { assertBetween, assertPositive, assertWhole } from './assert.ts';
import { type MeasurementPlan, planSimulator } from './plan/simulator.ts';
import { randomSource } from './random.ts';

export type { MeasurementPlan } from './plan/simulator.ts';

/** What such measurements reach: the 95 % half-width over the stress, with the whole budget. */
export interface PlanOutcome {
  readonly median: number | undefined; // undefined: half of them give no stress
  readonly nineOfTen: number | undefined; // nine of ten are at least as good; undefined: more than one gives no stress
  readonly givesStress: number; // share of them
}

/** One thing that could be changed in a plan. */
export type PlanChange =
  | 'secondSeries'
  | 'thirdSeries'
  | 'longerBar'
  | 'finerDial'
  | 'moreSteps'
  | 'startAtTenth';

/** A plan with one thing changed, and what it reaches. */
export interface PlanVariant {
  readonly change: PlanChange;
  readonly plan: MeasurementPlan;
  readonly outcome: PlanOutcome;
}

const MOST = { steps: 30, series: 5, repeats: 100_000 };
const FEWEST_STEPS = 6;
const MORE_STEPS = 1.5; // times as many
const TENTH = 0.1;

function assertPlan(plan: MeasurementPlan): void {
  assertPositive('gaugeLength', plan.gaugeLength, 'm');
  assertPositive('graduation', plan.graduation, 'm');
  assertPositive('readTo', plan.readTo, 'm');
  assertBetween('firstShare', plan.firstShare, 0, 0.9);
  assertWhole('steps', plan.steps, FEWEST_STEPS, MOST.steps);
  assertWhole('series', plan.series, 1, MOST.series);
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
 * @throws RangeError unless the plan's lengths, stress and modulus are above 0, firstShare is 0 to 0.9,
 * steps 6 to 30, series 1 to 5, and repeats 1 to 100 000
 */
export function planOutcome(plan: MeasurementPlan, repeats: number, seed: number): PlanOutcome {
  assertPlan(plan);
  assertWhole('repeats', repeats, 1, MOST.repeats);
  const simulate = planSimulator(plan);
  const random = randomSource(seed);
  const widths = Array.from({ length: repeats }, () => simulate(random)).sort((a, b) => a - b);
  return {
    median: pointOf(widths, 0.5),
    nineOfTen: pointOf(widths, 0.9),
    givesStress: widths.filter(Number.isFinite).length / repeats,
  };
}

/** The plan with each thing changed that would make it another; `longBar` is the longer bar's gauge length, m. */
function changed(plan: MeasurementPlan, longBar: number): readonly Omit<PlanVariant, 'outcome'>[] {
  const all: readonly (readonly [PlanChange, Partial<MeasurementPlan>, boolean])[] = [
    ['secondSeries', { series: 2 }, plan.series < 2],
    ['thirdSeries', { series: 3 }, plan.series < 3],
    ['longerBar', { gaugeLength: longBar }, plan.gaugeLength < longBar],
    ['finerDial', { graduation: plan.graduation / 2, readTo: plan.readTo / 2 }, true],
    [
      'moreSteps',
      { steps: Math.min(MOST.steps, Math.ceil(MORE_STEPS * plan.steps)) },
      plan.steps < MOST.steps,
    ],
    ['startAtTenth', { firstShare: TENTH }, plan.firstShare !== TENTH],
  ];
  return all.flatMap(([change, part, isOther]) =>
    isOther ? [{ change, plan: { ...plan, ...part } }] : [],
  );
}

/** The plan with one thing changed at a time, what helps most first. @throws RangeError as `planOutcome` does */
export function planVariants(
  plan: MeasurementPlan,
  {
    longBar,
    repeats,
    seed,
  }: { readonly longBar: number; readonly repeats: number; readonly seed: number },
): readonly PlanVariant[] {
  const variants = changed(plan, longBar).map((variant) => ({
    ...variant,
    outcome: planOutcome(variant.plan, repeats, seed),
  }));
  const rank = ({ outcome }: PlanVariant) => outcome.nineOfTen ?? Number.MAX_VALUE;
  return variants.sort(
    (a, b) => rank(a) - rank(b) || b.outcome.givesStress - a.outcome.givesStress,
  );
}
