/**
 * Four sheets from four mills of one make as at Ottersleigh: the same band, stretched alike, but one thread is dry, one
 * has two starts, and one sheet forgot that two strands share the wheel's load. Which reason explains which sheet.
 * Units: SI.
 * Source: invented; torques follow from those of the loading series by the exact screw (core/screw). Dry steel on
 * steel 0.15 to 0.25 (`screw-friction`), from memory. Efficiency from two torques: core/two-torques, derived here.
 */
import { agreementNumber } from '../../core/agreement.ts';
import { efficiencyFromTwoTorques, loweringTorque, raisingTorque } from '../../core/screw.ts';
import { OTTERSLEIGH, screwWith } from '../../models/mills/ottersleigh.ts';
import {
  HIDDEN_THREAD_FRICTION as greased,
  TOP_TORQUE,
} from '../../models/mills/ottersleigh-series.ts';
import { measuredStress, type UncertainStress } from './measured.ts';
import {
  type BelievedScrew,
  type PredictedPoint,
  type Prediction,
  predictedCurve,
  predictedStress,
} from './predicted.ts';

/** Friction of a thread that has long run dry: invented, from the upper half of the range of dry steel to a little beyond. */
export const DRY_THREAD = { low: 0.2, high: 0.3 } as const;

const PAST_TOP = 1.04; // of the torque above the drag, where a drawn prediction ends
const drag = OTTERSLEIGH.dragTorque;

/** What was true at a mill, and whether its sheet counted both strands. */
interface Sheet {
  readonly friction: number;
  readonly starts: number;
  readonly strandsCounted: boolean;
}

/** A reason that the reader tries, in the order of reasons.ts: the screw as it then is, and the share of the predicted stress that is left. */
interface Reason {
  readonly screw: BelievedScrew;
  readonly share: number;
}

const asBelieved: BelievedScrew = { starts: 1, threadFriction: OTTERSLEIGH.threadFriction };

const SHEETS: readonly Sheet[] = [
  { friction: 0.25, starts: 1, strandsCounted: true },
  { friction: greased, starts: 1, strandsCounted: false },
  { friction: greased, starts: 1, strandsCounted: true },
  { friction: greased, starts: 2, strandsCounted: true },
];

const REASONS: readonly Reason[] = [
  { screw: asBelieved, share: 1 },
  { screw: { starts: 1, threadFriction: DRY_THREAD }, share: 1 },
  { screw: { ...asBelieved, starts: 2 }, share: 1 },
  { screw: asBelieved, share: 0.5 },
];

/** A sheet looked at under one reason. */
export interface SheetResult {
  readonly torqueTimes: number; // its torques above the drag over those of the series
  readonly topTorque: number; // N·m
  readonly measured: UncertainStress;
  readonly predicted: Prediction;
  readonly curve: readonly PredictedPoint[]; // the prediction, a little past the highest torque
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

const torqueTimesOf = ({ friction, starts }: Sheet) =>
  perThrust(friction, starts) / perThrust(greased, 1);

const loadOf = (sheet: Sheet) => torqueTimesOf(sheet) * (TOP_TORQUE - drag);

function scaled(prediction: Prediction, times: number): Prediction {
  const { stress, standard, expanded } = prediction;
  return {
    ...prediction,
    stress: times * stress,
    standard: times * standard,
    expanded: times * expanded,
  };
}

function looked(sheet: Sheet, reason: Reason): SheetResult {
  const { friction, starts } = sheet;
  const torqueTimes = torqueTimesOf(sheet);
  const load = loadOf(sheet);
  const screw = screwWith(friction, starts);
  const loosening = loweringTorque(screw, load / perThrust(friction, starts));
  const measured = measuredStress(torqueTimes);
  const predicted = scaled(predictedStress(reason.screw, drag + load), shareLeft(sheet, reason));
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
    curve: curveOf(sheet, reason),
    agreement,
    looseningTorque: drag + loosening,
    efficiencyByLoosening,
    travelPerTurn: screw.lead,
    agrees: Math.abs(agreement) <= 1,
    frictionFits: efficiencyLow <= efficiencyByLoosening && efficiencyByLoosening <= efficiencyHigh,
    leadFits: screw.lead === lead,
  };
}

const shareLeft = ({ strandsCounted }: Sheet, reason: Reason) =>
  (strandsCounted ? 1 : 2) * reason.share;

function curveOf(sheet: Sheet, reason: Reason): readonly PredictedPoint[] {
  const share = shareLeft(sheet, reason);
  const upTo = drag + PAST_TOP * loadOf(sheet);
  return predictedCurve(reason.screw, upTo).map(({ torque, stress, low, high }) => ({
    torque,
    stress: share * stress,
    low: share * low,
    high: share * high,
  }));
}

/** Every sheet under every reason, by their places: `everySheet[sheet][reason]`. */
export const everySheet = (): readonly (readonly SheetResult[])[] =>
  SHEETS.map((sheet) => REASONS.map((reason) => looked(sheet, reason)));
