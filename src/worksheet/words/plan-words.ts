/**
 * What a plan for a measurement reaches, and what could be changed in it.
 * Units: SI in, the reader's out; half-widths are shares of the stress.
 */

import type { ChangeablePlan, PlanChange, PlanOutcome } from '../../core/plan.ts';
import { planLimits } from '../../core/plan.ts';
import type { TopLoadTrouble, WorksheetGuard, WorksheetGuardCode } from '../../core/worksheet.ts';
import type { PlanTrouble } from '../plan/inputs.ts';
import { seriesStepBelow } from '../plan/torques.ts';
import type { Shown } from '../state/shown.ts';
import { guardSentence } from './guard-words.ts';

type Offer = (plan: ChangeablePlan, shown: Shown) => string;

const OFFERS: Readonly<Record<PlanChange, Offer>> = {
  secondSeries: () => 'a second series',
  thirdSeries: () => 'three series in all',
  longerBar: ({ gaugeLength }, { quantity }) => `a bar of ${quantity(gaugeLength, 'length')}`,
  finerDial: ({ graduation }, { plain }) => `a dial graduated to ${plain(graduation, 'stretch')}`,
  moreSteps: ({ steps }) => `${steps} steps in a series`,
  startAtTenth: () => 'a start at a tenth of the load',
};

/** A change as an offer, from the plan that it leads to. */
export const offerName = (change: PlanChange, plan: ChangeablePlan, shown: Shown): string =>
  OFFERS[change](plan, shown);

const inPercent = (share: number): number => Math.ceil(100 * share); // up, as nine of ten are to be at least as good

/** `±14 %`; without a number, how many give a stress at all. */
export function reachText({ nineOfTen, givesStress }: PlanOutcome): string {
  if (nineOfTen !== undefined) return `±${inPercent(nineOfTen)} %`;
  return `a stress ${inPercent(givesStress)} times of 100`;
}

/** What a plan reaches, as a sentence. */
export function reachSentence(outcome: PlanOutcome): string {
  const { nineOfTen, givesStress } = outcome;
  if (nineOfTen !== undefined)
    return `Nine of ten such measurements would know the stress to ${reachText(outcome)} or better.`;
  if (givesStress === 0)
    return 'No such measurement would give a stress: the band stretches too little for this dial.';
  return `Only ${inPercent(givesStress)} of 100 such measurements would give a stress at all.`;
}

/** Whether an offer says more than what it is beside; `than` is a half-width over the stress, if there is one. */
export const isBetter = ({ nineOfTen, givesStress }: PlanOutcome, than: PlanOutcome): boolean => {
  if (than.nineOfTen === undefined)
    return nineOfTen !== undefined || givesStress > than.givesStress;
  return nineOfTen !== undefined && inPercent(nineOfTen) < inPercent(than.nineOfTen);
};

const AT_TOP: Readonly<Partial<Record<WorksheetGuardCode, string>>> = {
  aboveBandLimit: 'the stress would be above what the band’s maker allows',
  mayExceedBandLimit: 'the stress may be above what the band’s maker allows',
  aboveMillLimit: 'the force on the wheel would be above what the mill’s maker allows',
  mayExceedMillLimit: 'the force on the wheel may be above what the mill’s maker allows',
  beyondYieldShare: 'the steel may come too near its yield strength',
};

const limitText = ({ code, values: { limit } }: WorksheetGuard, { quantity }: Shown): string => {
  if (limit === undefined) return '';
  return `, ${quantity(limit, code.includes('Band') ? 'stress' : 'force')}`;
};

/** That the top of a plan is too high, by which limit, and how far it may go; downward, as no wrench reads finer. */
export function tooHighSentence(
  { guard, highest }: TopLoadTrouble,
  top: number,
  shown: Shown,
): string {
  const { load, system } = shown;
  const why = AT_TOP[guard.code];
  if (why === undefined) return guardSentence(guard, shown);
  const start = `STOP. At ${shown.quantity(top, load.name)} ${why}${limitText(guard, shown)}.`;
  const least = highest === undefined ? 0 : seriesStepBelow(highest, system, load.name);
  if (least <= 0) return `${start} No lower ${load.name} is safely below it either.`;
  return `${start} Go no higher than ${shown.quantity(least, load.name)}: uncertainty included, that stays below.`;
}

const between = ([least, most]: readonly [number, number]) => `${least} to ${most}`;

/** What is wrong with the boxes of a plan. */
export const PLAN_TROUBLES: Readonly<Record<PlanTrouble, string>> = {
  steps: `Plan ${between(planLimits.steps)} steps in a series.`,
  series: `Plan ${between(planLimits.series)} series.`,
  firstTorque: 'Start further down: the first step must be well below the top.',
};
