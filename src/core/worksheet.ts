/**
 * Everything that follows from the inputs of a worksheet: composed here, worked out in its rooms.
 * Units: SI only (m, N, Pa, N·m, rad).
 * Source: definition.
 */

import { type AtUse, worksheetAtUse } from './worksheet/at-use.ts';
import { type Checks, worksheetChecks } from './worksheet/checks/causes.ts';
import { type AgreementResult, worksheetAgreement } from './worksheet/decide/agreement.ts';
import { type AllowedLoad, allowedLoad } from './worksheet/decide/allowed-load.ts';
import { type BothResult, worksheetBoth } from './worksheet/decide/both.ts';
import { type Decision, worksheetDecision } from './worksheet/decide/decision.ts';
import { type DialSettingResult, worksheetDialSetting } from './worksheet/decide/dial-setting.ts';
import { type EfficiencyResult, worksheetEfficiency } from './worksheet/decide/efficiency.ts';
import { worksheetGuards } from './worksheet/decide/guards.ts';
import { allowedStress } from './worksheet/decide/limits.ts';
import type { WorksheetGuard } from './worksheet/decide/rails.ts';
import { type TurnsResult, worksheetTurns } from './worksheet/decide/turns.ts';
import { type WayResult, worksheetWays } from './worksheet/decide/ways.ts';
import type { Worksheet } from './worksheet/inputs.ts';
import { withDirection } from './worksheet/measure/dial-direction.ts';
import { type GraduationResult, worksheetGraduation } from './worksheet/measure/graduation.ts';
import { type StressTrials, trialsOfMeasured } from './worksheet/measure/measured.ts';
import { type Measurement, worksheetMeasurement } from './worksheet/measure/measurement.ts';
import { type RowReason, worksheetRowReasons } from './worksheet/measure/row-reasons.ts';
import type { Outcome } from './worksheet/outcome.ts';
import { type AssumedResult, worksheetAssumed } from './worksheet/predict/assumed.ts';
import { type Chain, worksheetChain } from './worksheet/predict/chain.ts';
import { type ForcesResult, worksheetForces } from './worksheet/predict/forces.ts';
import type {
  PredictedCurve,
  PredictedResult,
  PredictionTrials,
} from './worksheet/predict/prediction.ts';
import {
  reachOf,
  trialsOfPredicted,
  worksheetPredicted,
  worksheetPredictedCurve,
} from './worksheet/predict/prediction.ts';
import { type ScrewResult, screwNumbers } from './worksheet/predict/screw-model.ts';
import { type Opinions, worksheetOpinions } from './worksheet/second/opinions.ts';
import { torqueAtHand } from './worksheet/torque-at-hand.ts';
import { type DayResult, worksheetDay } from './worksheet/window/day.ts';
import { type WindowResult, worksheetWindow } from './worksheet/window/found.ts';
import { worksheetToday } from './worksheet/window/today.ts';

export type { WorksheetContribution } from './worksheet/budget.ts';
export type { Cause } from './worksheet/checks/causes.ts';
export type { Remark } from './worksheet/checks/remarks.ts';
export type { AgreementResult } from './worksheet/decide/agreement.ts';
export type { AllowedLoad } from './worksheet/decide/allowed-load.ts';
export { isApart } from './worksheet/decide/apart.ts';
export type { BandSetting } from './worksheet/decide/bands.ts';
export type { BothResult } from './worksheet/decide/both.ts';
export { type HeldBack, heldBack, isAboutBand } from './worksheet/decide/held.ts';
export type { WorksheetGuard, WorksheetGuardCode } from './worksheet/decide/rails.ts';
export type { SettingReach } from './worksheet/decide/setting-reach.ts';
export type { StressAtLoad } from './worksheet/decide/stress-at-load.ts';
export { stressAtLoad } from './worksheet/decide/stress-at-load.ts';
export {
  beyondPractice,
  type TopLoadTrouble,
  topLoadTroubles,
} from './worksheet/decide/top-load.ts';
export type { TurnsSetting } from './worksheet/decide/turns-setting.ts';
export type { WayStress } from './worksheet/decide/ways.ts';
export { emptyWorksheet } from './worksheet/empty.ts';
export type {
  BarMaterial,
  DialWritten,
  FreeSpanEnds,
  InputValue,
  ThicknessFrom,
  Worksheet,
  WorksheetBandOther,
  WorksheetCollar,
  WorksheetFriction,
  WorksheetReading,
  WorksheetStrands,
  WorksheetTensionerKind,
  WorksheetThreadForm,
} from './worksheet/inputs.ts';
export type { InputLimit } from './worksheet/known-inputs.ts';
export { type LoadName, loadIn, loadName } from './worksheet/load.ts';
export {
  type CountedTurns,
  countedTurns,
  passesWithoutTravel,
} from './worksheet/measure/counted-turns.ts';
export { looksLikeMarks } from './worksheet/measure/dial-marks.ts';
export type { MeasuredPoint } from './worksheet/measure/line.ts';
export type { MeasuredResult, StressTrials } from './worksheet/measure/measured.ts';
export { type Measurement, worksheetMeasurement } from './worksheet/measure/measurement.ts';
export type { RowReason } from './worksheet/measure/row-reasons.ts';
export type { RoughReason, Verdict } from './worksheet/measure/verdict.ts';
export type {
  Outcome,
  Ready,
  Refusal,
  RefusalCode,
  StopCode,
  Waiting,
} from './worksheet/outcome.ts';
export * from './worksheet/own-assumptions.ts';
export type { WorksheetPath } from './worksheet/path.ts';
export type { AssumedInput, AssumedName, NextBox } from './worksheet/predict/assumed.ts';
export { type Chain, worksheetChain } from './worksheet/predict/chain.ts';
export { type Drive, leadOf } from './worksheet/predict/drive.ts';
export type { PredictedPoint, PredictionTrials } from './worksheet/predict/prediction.ts';
export type { ChainOperands } from './worksheet/predict/theory.ts';
export type { OpinionResult, StressSpan } from './worksheet/second/opinions.ts';
export type { DayResult } from './worksheet/window/day.ts';
export type { WindowResult } from './worksheet/window/found.ts';

/** All results of one worksheet: plain data, each ready or waiting on its own. */
export interface WorksheetResults
  extends Pick<Chain, 'section' | 'strands'>,
    AssumedResult,
    AtUse,
    Partial<Pick<Measurement, 'dialRuns'>>,
    Pick<Measurement, 'series' | 'zero' | 'verdict' | 'measured' | 'points' | 'line'>,
    Checks,
    Omit<Decision, 'rails'> {
  readonly screw: Outcome<ScrewResult>;
  readonly graduation: Outcome<GraduationResult>;
  readonly forces: Outcome<ForcesResult>;
  readonly predicted: Outcome<PredictedResult>; // at the top torque of the readings, or at that in use
  readonly agreement: Outcome<AgreementResult>;
  readonly both: Outcome<BothResult>; // at the top torque, beside measured and predicted
  readonly rowReasons: readonly RowReason[]; // why rows are not used for the line
  readonly efficiency: Outcome<EfficiencyResult>;
  readonly dialSetting: Outcome<DialSettingResult>;
  readonly turns: Outcome<TurnsResult>;
  readonly opinions: Opinions;
  readonly window: Outcome<WindowResult>;
  readonly day: Outcome<DayResult>; // what a check should show, cold and warm
  readonly ways: readonly WayResult[];
  readonly allowedLoad?: AllowedLoad; // the most that the makers’ limits let this band have
  readonly guards: readonly WorksheetGuard[];
}

/** Everything at once; total: whatever the inputs are, nothing is thrown. Milliseconds. */
export function evaluateWorksheet(worksheet: Worksheet): WorksheetResults {
  return resultsOf(worksheet, worksheetChain(worksheet), worksheetMeasurement(worksheet));
}

/**
 * Everything, from a calculation and a measurement at hand: the one hangs on all but `rig` and `ways`, the other on
 * `band`, `tensioner`, `rig` and `readings`, and what is left takes little.
 */
export function resultsOf(
  asFilledIn: Worksheet,
  chain: Chain,
  measurement: Measurement,
): WorksheetResults {
  const { section, strands, screw, theory } = chain;
  const { dialRuns, series, zero, verdict, measured, points, line } = measurement;
  const worksheet = { ...asFilledIn, rig: withDirection(asFilledIn.rig, dialRuns) };
  const predicted = worksheetPredicted(theory, torqueAtHand(worksheet));
  const agreement = worksheetAgreement(measured, predicted);
  const efficiency = worksheetEfficiency(worksheet, measured, section, strands);
  const turns = worksheetTurns(worksheet, points, efficiency);
  const decision = worksheetDecision(worksheet, chain, measurement, { efficiency, turns });
  const { rails: _, ...decided } = decision;
  const ways = worksheetWays(worksheet, measurement);
  const allowed = allowedStress(worksheet, chain);
  const highest = allowedLoad(allowed, { theory, measured });
  const both = worksheetBoth(worksheet, { zero, measured, predicted, efficiency });
  const used = worksheetAtUse(worksheet, { theory, measured, both });
  const window = worksheetWindow(worksheet, chain, worksheetToday(used));
  return {
    section,
    strands,
    screw: screwNumbers(screw),
    ...worksheetAssumed(theory, predicted),
    ...(dialRuns && { dialRuns }),
    series,
    zero,
    verdict,
    rowReasons: worksheetRowReasons(measurement.rows, zero),
    measured,
    points,
    line,
    graduation: worksheetGraduation(worksheet),
    forces: worksheetForces(measured, section, strands),
    predicted,
    agreement,
    ...used,
    both,
    efficiency,
    ...worksheetChecks(worksheet, { measured, predicted, agreement, efficiency }),
    ...decided,
    dialSetting: worksheetDialSetting(worksheet, {
      rows: measurement.rows,
      zero,
      setting: decided.setting,
    }),
    turns,
    opinions: worksheetOpinions(worksheet, chain, measured),
    window,
    day: worksheetDay(worksheet, { ...decided, turns }),
    ways,
    ...(highest && { allowedLoad: highest }),
    guards: worksheetGuards(worksheet, {
      ...decision,
      agreement,
      dialRuns,
      series,
      zero,
      verdict,
      turns,
      measured,
      ways,
      allowed,
      allowedLoad: highest,
      room: window,
    }),
  };
}

/** The 95 % interval of the measured stress by trials: up to seconds, so not among the results. */
export function trialsOfStress(worksheet: Worksheet): Outcome<StressTrials> {
  return trialsOfMeasured(worksheetMeasurement(worksheet).inputs);
}

/** The 95 % interval of the prediction by trials, at the top torque: tens of milliseconds, so not among the results. */
export function trialsOfPrediction(worksheet: Worksheet): Outcome<PredictionTrials> {
  const { theory, predicted } = topPrediction(worksheet);
  return trialsOfPredicted(theory, predicted);
}

/**
 * The prediction over several torques, N·m, for the chart: its interval is that to first order, or
 * reaches as that by trials does at the top torque.
 */
export function predictedCurve(
  worksheet: Worksheet,
  torques: readonly number[],
  trials?: PredictionTrials,
): Outcome<PredictedCurve> {
  const { theory, predicted } = topPrediction(worksheet);
  const reach = trials && predicted.ready ? reachOf(trials, predicted) : undefined;
  return worksheetPredictedCurve(theory, torques, reach);
}

function topPrediction(worksheet: Worksheet) {
  const { theory } = worksheetChain(worksheet);
  return { theory, predicted: worksheetPredicted(theory, torqueAtHand(worksheet)) };
}
