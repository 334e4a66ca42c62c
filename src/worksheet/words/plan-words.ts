/**
 * What a plan for a measurement reaches, and what could be changed in it.
 * Units: SI in, the reader's out; half-widths are shares of the stress.
 */

import type { ChangeablePlan, PlanChange, PlanOutcome } from '../../core/plan.ts';
import { planLimits } from '../../core/plan.ts';
import type {
  LoadName,
  StressAtLoad,
  TopLoadTrouble,
  WorksheetGuard,
  WorksheetGuardCode,
} from '../../core/worksheet.ts';
import { formatAbout } from '../../units/format-about.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { unitLabel } from '../../units/label.ts';
import { fromSi } from '../../units/si-value.ts';
import type { TopFrom } from '../plan/default-top.ts';
import type { Planned, PlanTrouble } from '../plan/inputs.ts';
import { readableBelow, scaleOf } from '../plan/torques.ts';
import type { PlanAnswer } from '../state/answers.ts';
import type { Shown } from '../state/shown.ts';
import { guardSentence } from './guard-words.ts';

type Offer = (plan: ChangeablePlan, shown: Shown) => string;

/** A dial by its graduation, in few digits where that was round in the other units. */
export const dialName = (graduation: number, system: UnitSystem): string =>
  `a dial graduated to ${formatAbout(graduation, 'stretch', system)}`;

const OFFERS: Readonly<Record<PlanChange, Offer>> = {
  secondSeries: () => 'a second series',
  thirdSeries: () => 'three series in all',
  longerBar: ({ gaugeLength }, { quantity }) => `a bar of ${quantity(gaugeLength, 'length')}`,
  finerDial: ({ graduation }, { system }) => dialName(graduation, system),
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
  return `a stress in ${inPercent(givesStress)} of 100 tries`;
}

/** What a plan reaches, as a sentence. */
export function reachSentence(outcome: PlanOutcome): string {
  const { nineOfTen, givesStress } = outcome;
  if (nineOfTen !== undefined)
    return `You would know the stress to ${reachText(outcome)} or better, nine times out of ten.`;
  if (givesStress === 0)
    return 'This plan gives no stress: the band stretches too little for this dial.';
  return `Only ${inPercent(givesStress)} of 100 such measurements would give a stress at all.`;
}

/** What the readings on the sheet give already, as a share of the stress, beside what a plan reaches, and why that may be less. */
export function haveSentence(share: number, { nineOfTen }: PlanOutcome): string {
  const have = `Your readings give ±${inPercent(share)} % now.`;
  if (nineOfTen !== undefined && inPercent(nineOfTen) <= inPercent(share)) return have;
  return `${have} The plan promises less because it counts worse days too: nine of ten tries must be as good.`;
}

/** What offers are better than; `by`: whose reach that is. */
export const besideSentence = (outcome: PlanOutcome, by: string): string =>
  `${by} would reach ${reachText(outcome)}. With one thing changed:`;

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

/** The highest load that a limit lets pass, downward as no wrench reads finer; none where that is none at all. */
function lowerTop(highest: number | undefined, shown: Shown): string | undefined {
  const below = highest === undefined ? 0 : readableBelow(highest, scaleOf(shown));
  return below > 0 ? shown.plain(below, shown.load.name) : undefined;
}

/** That the stress may be more than is in use, and what to do: about the top of a plan, or about the target where no load is known. */
function practiceSentence(
  { guard: { values }, highest }: TopLoadTrouble,
  top: number | undefined,
  by: StressAtLoad['by'] | undefined,
  shown: Shown,
): string {
  const { quantity, plain, load } = shown;
  const { stress = 0, highest: reached = 0, high: usual = 0 } = values;
  const most = `${quantity(usual, 'stress')} that small mills usually use (common practice, no source)`;
  if (top === undefined)
    return `Your target, ${quantity(stress, 'stress')}, is more than the ${most}. Choose a lower one in part 8.`;
  const orKnowMore =
    stress > usual || by === 'readings' ? '' : `, or say more about the ${load.by} in part 2`;
  const lower = lowerTop(highest, shown);
  const advice = lower === undefined ? 'Plan a lower top' : `Plan a top of ${lower} or less`;
  return `At ${plain(top, load.name)} the stress may reach ${quantity(reached, 'stress')}, uncertainty included. That is more than the ${most}. ${advice}${orKnowMore}.`;
}

const capitalized = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** That the top of a plan passes limits, which count most first, and how far it may go: what keeps to the last keeps to all. */
function stopSentence(troubles: readonly TopLoadTrouble[], top: number, shown: Shown): string {
  const { load, plain } = shown;
  const reasons = troubles.map(({ guard }) => {
    const why = AT_TOP[guard.code];
    return why && why + limitText(guard, shown);
  });
  const [first, ...others] = reasons.filter((reason) => reason !== undefined);
  if (first === undefined)
    return troubles.map(({ guard }) => guardSentence(guard, shown)).join(' ');
  const lower = lowerTop(troubles.at(-1)?.highest, shown);
  return [
    `STOP. At ${plain(top, load.name)} ${first}.`,
    ...others.map((reason) => `${capitalized(reason)}.`),
    lower === undefined
      ? `No lower ${load.name} is safely below it either.`
      : `Go no higher than ${lower}: uncertainty included, that stays below.`,
  ].join(' ');
}

/** One thing that is wrong with the top of a plan. */
export interface TooHigh {
  readonly isStop: boolean;
  readonly sentence: string;
}

const isOfPractice = ({ guard }: TopLoadTrouble): boolean => guard.code === 'outsideCommonPractice';

/** All that is wrong with the top of a plan, N·m or Pa: the limits it passes, what counts most first, then common practice. */
export function tooHighSentences(
  { tooHigh = [], at }: Pick<PlanAnswer, 'tooHigh' | 'at'>,
  top: number | undefined,
  shown: Shown,
): readonly TooHigh[] {
  const load = at && top; // a stress that is the target hangs on no load
  const limits = tooHigh.filter((trouble) => !isOfPractice(trouble));
  const ofPractice = tooHigh.filter(isOfPractice);
  return [
    ...(limits.length > 0 && load !== undefined
      ? [{ isStop: true, sentence: stopSentence(limits, load, shown) }]
      : []),
    ...ofPractice.map((trouble) => ({
      isStop: false,
      sentence: practiceSentence(trouble, load, at?.by, shown),
    })),
  ];
}

const BY: Readonly<Record<StressAtLoad['by'], string>> = {
  readings: 'by your readings',
  calculation: 'by calculation',
};

/** What the band carries at the top of a plan; nothing while that is not known. */
export function topSentence(
  { stressAtTop, at }: Pick<PlanAnswer, 'stressAtTop' | 'at'>,
  top: number | undefined,
  { quantity, plain, plusMinus, load }: Shown,
): string | undefined {
  if (stressAtTop === undefined) return undefined;
  if (top === undefined || at === undefined)
    return `At the top the band should carry your target, ${quantity(stressAtTop, 'stress')}.`;
  return `At ${plain(top, load.name)} the band should carry ${plusMinus(at.stress, at.expandedUncertainty, 'stress')}, ${BY[at.by]}.`;
}

/** Why the top is where it is, though no one typed it. */
const TOP_FROM: Readonly<Record<Exclude<TopFrom, 'typed'>, (load: LoadName) => string>> = {
  use: (load) => `the ${load} that you use now`,
  readings: () => 'as high as your readings so far',
  targetByReadings: () => 'the most that your target may need, by your readings',
  targetByCalculation: () => 'what your target should need, by calculation',
  limits: () => 'no higher, so that the limits hold, uncertainty included',
};

/** The top that stands for the empty box, and why; nothing where one is typed or none is known. */
export function defaultTopSentence(
  { topTorque, topFrom }: Pick<Planned, 'topTorque' | 'topFrom'>,
  { load: { name }, plain }: Shown,
): string | undefined {
  if (topTorque === undefined || topFrom === undefined || topFrom === 'typed') return undefined;
  return `Left empty, the plan goes up to ${plain(topTorque, name)}: ${TOP_FROM[topFrom](name)}.`;
}

/** The loads of a planned series as they are printed, without their unit. */
export function settingTexts({ torques }: Pick<Planned, 'torques'>, shown: Shown) {
  const { kind, system } = scaleOf(shown);
  return torques.map((torque) => shown.number(fromSi(torque, kind, system)));
}

/** Their unit. */
export function settingUnit(shown: Shown): string {
  const { kind, system } = scaleOf(shown);
  return unitLabel(kind, system);
}

/** How each load is raised. */
export const SLOWLY: Readonly<Record<LoadName, string>> = {
  torque: 'Turn slowly.',
  pressure: 'Pump slowly.',
};

const between = ([least, most]: readonly [number, number]) => `${least} to ${most}`;

/** What is wrong with the boxes of a plan. */
export const PLAN_TROUBLES: Readonly<Record<PlanTrouble, string>> = {
  steps: `Plan ${between(planLimits.steps)} steps in a series.`,
  series: `Plan ${between(planLimits.series)} series.`,
  firstTorque: 'Start further down: the first step must be well below the top.',
};
