/**
 * Four sheets from four mills of one make as at Ottersleigh: the same band, stretched alike, but one thread is dry, one
 * has two starts, and one sheet forgot that two strands share the wheel's load. Which reason explains which sheet.
 * Units: SI.
 * Source: invented; torques follow from those of the loading series by the exact screw (core/screw). Dry steel on
 * steel 0.15 to 0.25 (`screw-friction`), from memory. Efficiency from two torques: core/two-torques, derived here.
 */
import { agreementNumber } from '../../core/agreement.ts';
import { efficiencyFromTwoTorques, loweringTorque, raisingTorque } from '../../core/screw.ts';
import {
  evaluateWorksheet,
  leadOf,
  type PredictedPoint,
  type Worksheet,
} from '../../core/worksheet.ts';
import { OTTERSLEIGH, screwWith } from '../../models/mills/ottersleigh.ts';
import {
  HIDDEN_THREAD_FRICTION as greased,
  OTTERSLEIGH_SHEET,
} from '../../models/mills/ottersleigh-sheet.ts';
import { curveUpTo } from './predicted-curve.ts';
import { there } from './there.ts';

/** Friction of a thread that has long run dry: invented, from the upper half of the range of dry steel to a little beyond. */
export const DRY_THREAD = { low: 0.2, high: 0.3 } as const;

const PAST_TOP = 1.04; // of the torque above the drag, where a drawn prediction ends
const drag = OTTERSLEIGH.dragTorque;
const seriesTorques = OTTERSLEIGH_SHEET.readings.map(({ torque = 0 }) => torque);
const seriesLoad = Math.max(...seriesTorques) - drag;

/** What was true at a mill, and whether its sheet counted both strands. */
interface Sheet {
  readonly friction: number;
  readonly starts: number;
  readonly strandsCounted: boolean;
}

/** A reason that the reader tries, in the order of reasons.ts: the screw as it then is, and the share of the predicted stress that is left. */
interface Reason {
  readonly starts: number;
  readonly threadFriction: { readonly low: number; readonly high: number };
  readonly share: number;
}

const asBelieved: Reason = { starts: 1, threadFriction: OTTERSLEIGH.threadFriction, share: 1 };

const SHEETS: readonly Sheet[] = [
  { friction: 0.25, starts: 1, strandsCounted: true },
  { friction: greased, starts: 1, strandsCounted: false },
  { friction: greased, starts: 1, strandsCounted: true },
  { friction: greased, starts: 2, strandsCounted: true },
];

const REASONS: readonly Reason[] = [
  asBelieved,
  { ...asBelieved, threadFriction: DRY_THREAD },
  { ...asBelieved, starts: 2 },
  { ...asBelieved, share: 0.5 },
];

/** A sheet looked at under one reason. */
export interface SheetResult {
  readonly torqueTimes: number; // its torques above the drag over those of the series
  readonly topTorque: number; // N·m
  readonly measured: { readonly stress: number; readonly expanded: number }; // Pa
  readonly predicted: { readonly stress: number; readonly expanded: number }; // Pa
  readonly efficiencyLow: number; // of the screw predicted
  readonly efficiencyHigh: number;
  readonly lead: number; // m
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

const loadOf = (sheet: Sheet) => torqueTimesOf(sheet) * seriesLoad;

/** The worksheet of a mill, its screw taken to be as the reason has it. */
function filledIn(sheet: Sheet, { starts, threadFriction: { low, high } }: Reason): Worksheet {
  const torqueTimes = torqueTimesOf(sheet);
  const { tensioner, readings, ...rest } = OTTERSLEIGH_SHEET;
  return {
    ...rest,
    tensioner: { ...tensioner, starts, friction: { kind: 'friction', low, high } },
    readings: readings.map(({ torque = 0, ...row }) => ({
      ...row,
      torque: drag + torqueTimes * (torque - drag),
    })),
  };
}

const shareLeft = ({ strandsCounted }: Sheet, { share }: Reason) =>
  (strandsCounted ? 1 : 2) * share;

/** What the handle told when it was turned back, and the screw when it was turned through. */
function noted(sheet: Sheet) {
  const { friction, starts } = sheet;
  const load = loadOf(sheet);
  const screw = screwWith(friction, starts);
  const loosening = loweringTorque(screw, load / perThrust(friction, starts));
  return {
    looseningTorque: drag + loosening,
    efficiencyByLoosening: efficiencyFromTwoTorques({
      tighteningTorque: load,
      looseningTorque: loosening,
    }),
    travelPerTurn: screw.lead,
  };
}

function looked(sheet: Sheet, reason: Reason): SheetResult {
  const worksheet = filledIn(sheet, reason);
  const results = evaluateWorksheet(worksheet);
  const share = shareLeft(sheet, reason);
  const { stress, expandedUncertainty } = there(results.measured);
  const theory = there(results.predicted);
  const { efficiencyLow, efficiencyHigh, drive } = there(results.screw);
  const lead = leadOf(drive) ?? 0;
  const measured = { stress, expanded: expandedUncertainty };
  const predicted = { stress: share * theory.stress, expanded: share * theory.expandedUncertainty };
  const agreement = agreementNumber(
    { value: measured.stress, expanded: measured.expanded },
    { value: predicted.stress, expanded: predicted.expanded },
  );
  const note = noted(sheet);
  const own = note.efficiencyByLoosening;
  return {
    ...note,
    torqueTimes: torqueTimesOf(sheet),
    topTorque: drag + loadOf(sheet),
    measured,
    predicted,
    efficiencyLow,
    efficiencyHigh,
    lead,
    curve: curveOf(worksheet, share, drag + PAST_TOP * loadOf(sheet)),
    agreement,
    agrees: Math.abs(agreement) <= 1,
    frictionFits: efficiencyLow <= own && own <= efficiencyHigh,
    leadFits: note.travelPerTurn === lead,
  };
}

function curveOf(worksheet: Worksheet, share: number, upTo: number): readonly PredictedPoint[] {
  return curveUpTo(worksheet, upTo).map(({ torque, stress, low, high }) => ({
    torque,
    stress: share * stress,
    low: share * low,
    high: share * high,
  }));
}

/** Every sheet under every reason, by their places: `everySheet[sheet][reason]`. */
export const everySheet = (): readonly (readonly SheetResult[])[] =>
  SHEETS.map((sheet) => REASONS.map((reason) => looked(sheet, reason)));
