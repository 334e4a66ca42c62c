/**
 * Four sheets from four mills of one make as at Ottersleigh: the same band, stretched alike, but one thread is dry, one
 * has two starts, and one sheet forgot that two strands share the wheel's load. Which reason explains which sheet.
 * Units: SI.
 * Source: invented; torques follow from those of the loading series by the exact screw (core/screw). Dry steel on
 * steel 0.15 to 0.25 (`screw-friction`), from memory. Efficiency from two torques: core/two-torques, derived here.
 */
import { agreementNumber } from '../core/agreement.ts';
import { loweringTorque, raisingTorque } from '../core/screw.ts';
import { efficiencyFromTwoTorques } from '../core/two-torques.ts';
import { OTTERSLEIGH, screwWith, TOP_TORQUE } from './ottersleigh.ts';
import { measuredStress, type UncertainStress } from './ottersleigh-measured.ts';
import { type BelievedScrew, type Prediction, predictedStress } from './ottersleigh-predicted.ts';

const DRY = { low: 0.2, high: 0.3 };

/** What was true at a mill, and whether its sheet counted both strands. */
interface Sheet {
  readonly friction: number;
  readonly starts: number;
  readonly strandsCounted: boolean;
}

/** A reason that the reader tries: the screw as it then is, and the share of the predicted stress that is left. */
interface Reason {
  readonly words: string;
  readonly screw: BelievedScrew;
  readonly share: number;
}

const asBelieved: BelievedScrew = { starts: 1, threadFriction: OTTERSLEIGH.threadFriction };
const greased = OTTERSLEIGH.hiddenThreadFriction;

const SHEETS: readonly Sheet[] = [
  { friction: 0.25, starts: 1, strandsCounted: true },
  { friction: greased, starts: 1, strandsCounted: false },
  { friction: greased, starts: 1, strandsCounted: true },
  { friction: greased, starts: 2, strandsCounted: true },
];

const REASONS: readonly Reason[] = [
  { words: 'nothing is wrong', screw: asBelieved, share: 1 },
  { words: 'the thread is dry', screw: { starts: 1, threadFriction: DRY }, share: 1 },
  { words: 'the thread has two starts', screw: { ...asBelieved, starts: 2 }, share: 1 },
  { words: 'two strands share the pull', screw: asBelieved, share: 0.5 },
];

/** The reasons in words, in the order of their numbers. */
export const REASON_WORDS = REASONS.map(({ words }) => words);

/** The names of the sheets, in the order of their numbers. */
export const SHEET_NAMES = SHEETS.map((_, place) => `sheet ${place + 1}`);

/** A sheet looked at under one reason. */
export interface SheetResult {
  readonly torqueTimes: number; // its torques above the drag over those of the series
  readonly topTorque: number; // N·m
  readonly measured: UncertainStress;
  readonly predicted: Prediction;
  readonly agreement: number;
  readonly looseningTorque: number; // N·m, as noted, drag included
  readonly efficiencyByLoosening: number;
  readonly travelPerTurn: number; // m, as noted
  readonly agrees: boolean;
  readonly frictionFits: boolean;
  readonly leadFits: boolean;
}

const perThrust = (friction: number, starts: number) =>
  raisingTorque(screwWith(friction, starts), 1);

function scaled(prediction: Prediction, times: number): Prediction {
  const { stress, standard, expanded } = prediction;
  const stresses = [stress, standard, expanded].map((value) => value * times);
  const [one = 0, two = 0, three = 0] = stresses;
  return { ...prediction, stress: one, standard: two, expanded: three };
}

function looked({ friction, starts, strandsCounted }: Sheet, reason: Reason): SheetResult {
  const drag = OTTERSLEIGH.dragTorque.value;
  const torqueTimes = perThrust(friction, starts) / perThrust(greased, 1);
  const load = torqueTimes * (TOP_TORQUE - drag);
  const screw = screwWith(friction, starts);
  const loosening = loweringTorque(screw, load / perThrust(friction, starts));
  const measured = measuredStress(torqueTimes);
  const share = (strandsCounted ? 1 : 2) * reason.share;
  const predicted = scaled(predictedStress(reason.screw, drag + load), share);
  const agreement = agreementNumber(
    { value: measured.stress, expanded: measured.expanded },
    { value: predicted.stress, expanded: predicted.expanded },
  );
  const efficiencyByLoosening = efficiencyFromTwoTorques({
    tighteningTorque: load,
    looseningTorque: loosening,
  });
  const { efficiencyLow, efficiencyHigh, lead } = predicted;
  return {
    torqueTimes,
    topTorque: drag + load,
    measured,
    predicted,
    agreement,
    looseningTorque: drag + loosening,
    efficiencyByLoosening,
    travelPerTurn: screw.lead,
    agrees: Math.abs(agreement) <= 1,
    frictionFits: efficiencyLow <= efficiencyByLoosening && efficiencyByLoosening <= efficiencyHigh,
    leadFits: screw.lead === lead,
  };
}

const kept = new Map<string, SheetResult>();

/** A sheet under a reason, both by their place; each pair is worked out once. @throws RangeError for a place that is not there */
export function sheetResult(sheet: number, reason: number): SheetResult {
  const [one, why] = [SHEETS[sheet], REASONS[reason]];
  if (!one || !why)
    throw new RangeError(`sheet and reason must be ours (were ${sheet}, ${reason})`);
  const key = `${sheet} ${reason}`;
  const result = kept.get(key) ?? looked(one, why);
  kept.set(key, result);
  return result;
}
