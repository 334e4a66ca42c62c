/**
 * What a plan may hold, what it reaches, and the things that could be changed in it.
 * Units: SI only (m, Pa); half-widths are shares of the stress.
 * Source: definition; the limits, common practice, no source.
 */
import { planLimits } from './limits.ts';
import type { MeasurementPlan } from './simulator.ts';

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

/** A plan with one thing changed. */
export interface ChangedPlan<Plan extends ChangeablePlan = MeasurementPlan> {
  readonly change: PlanChange;
  readonly plan: Plan;
}

/** The same, with what it reaches. */
interface PlanVariant extends ChangedPlan {
  readonly outcome: PlanOutcome;
}

/** As much of a plan as can be changed. */
export type ChangeablePlan = Omit<MeasurementPlan, 'stressAtTop' | 'youngsModulus'>;

/** Share of the top load at which a series is best begun: below it the band is not yet straight. */
export const startingShare = 0.1;

/** How often a plan is tried: enough to tell nine of ten, few enough for a phone. */
export const planRepeats = 200;

const MORE_STEPS = 1.5; // times as many

/** The plan with one thing changed at a time, evenly spaced where its loads no longer fit; `longBar` is the longer bar's gauge length, m. */
export function planChanges<Plan extends ChangeablePlan>(
  plan: Plan,
  longBar: number,
): readonly ChangedPlan<Plan>[] {
  const [, mostSteps] = planLimits.steps;
  const all: readonly (readonly [PlanChange, Partial<ChangeablePlan>, boolean])[] = [
    ['secondSeries', { series: 2 }, plan.series < 2],
    ['thirdSeries', { series: 3 }, plan.series < 3],
    ['longerBar', { gaugeLength: longBar }, plan.gaugeLength < longBar],
    ['finerDial', { graduation: plan.graduation / 2, readTo: plan.readTo / 2 }, true],
    [
      'moreSteps',
      { steps: Math.min(mostSteps, Math.ceil(MORE_STEPS * plan.steps)), loads: undefined },
      plan.steps < mostSteps,
    ],
    [
      'startAtTenth',
      { firstShare: startingShare, loads: undefined },
      plan.firstShare !== startingShare,
    ],
  ];
  return all.flatMap(([change, part, isOther]) =>
    isOther ? [{ change, plan: { ...plan, ...part } }] : [],
  );
}

const rank = ({ outcome }: Pick<PlanVariant, 'outcome'>) => outcome.nineOfTen ?? Number.MAX_VALUE;

/** What helps most first. */
export const bestFirst = <Variant extends Pick<PlanVariant, 'outcome'>>(
  variants: readonly Variant[],
): readonly Variant[] =>
  [...variants].sort((a, b) => rank(a) - rank(b) || b.outcome.givesStress - a.outcome.givesStress);
