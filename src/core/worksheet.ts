/**
 * Everything that follows from the inputs of a worksheet: composed here, worked out in its rooms.
 * Units: SI only (m, N, Pa, N·m, rad).
 * Source: definition.
 */

import type { AgreementResult } from './worksheet/decide/agreement.ts';
import { worksheetAgreement } from './worksheet/decide/agreement.ts';
import type { BothResult } from './worksheet/decide/both.ts';
import { worksheetBoth } from './worksheet/decide/both.ts';
import type { Decision } from './worksheet/decide/decision.ts';
import { worksheetDecision } from './worksheet/decide/decision.ts';
import type { DialSettingResult } from './worksheet/decide/dial-setting.ts';
import { worksheetDialSetting } from './worksheet/decide/dial-setting.ts';
import type { EfficiencyResult } from './worksheet/decide/efficiency.ts';
import { worksheetEfficiency } from './worksheet/decide/efficiency.ts';
import { worksheetGuards } from './worksheet/decide/guards.ts';
import { allowedStress } from './worksheet/decide/limits.ts';
import type { WorksheetGuard } from './worksheet/decide/rails.ts';
import type { ExpectedStretchResult } from './worksheet/decide/setting.ts';
import { worksheetExpectedStretch } from './worksheet/decide/setting.ts';
import type { TurnsResult } from './worksheet/decide/turns.ts';
import { worksheetTurns } from './worksheet/decide/turns.ts';
import type { WayResult } from './worksheet/decide/ways.ts';
import { worksheetWays } from './worksheet/decide/ways.ts';
import type { Worksheet } from './worksheet/inputs.ts';
import type { GraduationResult } from './worksheet/measure/graduation.ts';
import { worksheetGraduation } from './worksheet/measure/graduation.ts';
import type { StressTrials } from './worksheet/measure/measured.ts';
import { trialsOfMeasured } from './worksheet/measure/measured.ts';
import type { Measurement } from './worksheet/measure/measurement.ts';
import { worksheetMeasurement } from './worksheet/measure/measurement.ts';
import { worksheetRows } from './worksheet/measure/readings.ts';
import type { RowReason } from './worksheet/measure/row-reasons.ts';
import { worksheetRowReasons } from './worksheet/measure/row-reasons.ts';
import type { Outcome } from './worksheet/outcome.ts';
import type { Chain } from './worksheet/predict/chain.ts';
import { worksheetChain } from './worksheet/predict/chain.ts';
import type { ForcesResult } from './worksheet/predict/forces.ts';
import { worksheetForces } from './worksheet/predict/forces.ts';
import type {
  PredictedCurve,
  PredictedResult,
  PredictionTrials,
} from './worksheet/predict/prediction.ts';
import {
  reachOf,
  topTorqueOf,
  trialsOfPredicted,
  worksheetPredicted,
  worksheetPredictedCurve,
} from './worksheet/predict/prediction.ts';
import type { ScrewResult } from './worksheet/predict/screw.ts';
import { screwNumbers } from './worksheet/predict/screw.ts';

export type { WorksheetContribution } from './worksheet/budget.ts';
export type { AgreementResult } from './worksheet/decide/agreement.ts';
export type { BothResult } from './worksheet/decide/both.ts';
export type { WorksheetGuard, WorksheetGuardCode } from './worksheet/decide/rails.ts';
export type { WayStress } from './worksheet/decide/ways.ts';
export {
  type BarMaterial,
  emptyWorksheet,
  type InputValue,
  type Worksheet,
  type WorksheetFriction,
  type WorksheetReading,
  type WorksheetThreadForm,
} from './worksheet/inputs.ts';
export type { InputLimit } from './worksheet/known-inputs.ts';
export type { MeasuredPoint } from './worksheet/measure/line.ts';
export type { StressTrials } from './worksheet/measure/measured.ts';
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
export type { WorksheetPath } from './worksheet/path.ts';
export { type Chain, worksheetChain } from './worksheet/predict/chain.ts';
export type { PredictedPoint, PredictionTrials } from './worksheet/predict/prediction.ts';
export type { ChainOperands } from './worksheet/predict/theory.ts';

/** All results of one worksheet: plain data, each ready or waiting on its own. */
export interface WorksheetResults
  extends Pick<Chain, 'section' | 'strands'>,
    Pick<Measurement, 'series' | 'zero' | 'verdict' | 'measured' | 'points' | 'line'>,
    Pick<Decision, 'setting' | 'theorySetting' | 'otherBand'> {
  readonly screw: Outcome<ScrewResult>;
  readonly graduation: Outcome<GraduationResult>;
  readonly forces: Outcome<ForcesResult>;
  readonly predicted: Outcome<PredictedResult>; // at the top torque of the readings
  readonly agreement: Outcome<AgreementResult>;
  readonly both: Outcome<BothResult>; // at the top torque, beside measured and predicted
  readonly rowReasons: readonly RowReason[]; // why rows are not used for the line
  readonly efficiency: Outcome<EfficiencyResult>;
  readonly expectedStretch: Outcome<ExpectedStretchResult>;
  readonly dialSetting: Outcome<DialSettingResult>;
  readonly turns: Outcome<TurnsResult>;
  readonly ways: readonly WayResult[];
  readonly guards: readonly WorksheetGuard[];
}

/** Everything at once; total: whatever the inputs are, nothing is thrown. Milliseconds. */
export function evaluateWorksheet(worksheet: Worksheet): WorksheetResults {
  return resultsOf(worksheet, worksheetChain(worksheet), worksheetMeasurement(worksheet));
}

/**
 * Everything, from a calculation and a measurement at hand: the one hangs on `mill`, `band` and
 * `tensioner`, the other on `band`, `tensioner`, `rig` and `readings`, and what is left takes little.
 */
export function resultsOf(
  worksheet: Worksheet,
  chain: Chain,
  measurement: Measurement,
): WorksheetResults {
  const { section, strands, screw, theory } = chain;
  const { series, zero, verdict, measured, points, line } = measurement;
  const predicted = worksheetPredicted(theory, topTorqueOf(measurement.rows));
  const efficiency = worksheetEfficiency(worksheet, measured, section, strands);
  const decision = worksheetDecision(worksheet, chain, measurement, efficiency);
  const { setting, theorySetting, otherBand } = decision;
  const turns = worksheetTurns(worksheet, points, efficiency);
  const ways = worksheetWays(worksheet, measurement);
  const allowed = allowedStress(worksheet, chain);
  return {
    section,
    strands,
    screw: screwNumbers(screw),
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
    agreement: worksheetAgreement(measured, predicted),
    both: worksheetBoth(worksheet, { zero, measured, predicted, efficiency }),
    efficiency,
    expectedStretch: worksheetExpectedStretch(worksheet),
    setting,
    dialSetting: worksheetDialSetting(worksheet.rig, { rows: measurement.rows, zero, setting }),
    theorySetting,
    otherBand,
    turns,
    ways,
    guards: worksheetGuards(worksheet, {
      ...decision,
      series,
      zero,
      verdict,
      turns,
      measured,
      ways,
      allowed,
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
  return { theory, predicted: worksheetPredicted(theory, topTorqueOf(worksheetRows(worksheet))) };
}
