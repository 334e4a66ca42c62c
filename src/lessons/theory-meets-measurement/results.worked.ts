/**
 * What the worksheet of the mill at Ottersleigh comes to, as plain data: worked out at build, so that the page need not
 * carry the code.
 * Units: SI.
 * Source: core/worksheet.
 */
import { evaluateWorksheet, leadOf, type MeasuredPoint } from '../../core/worksheet.ts';
import { OTTERSLEIGH_SHEET } from '../../models/mills/ottersleigh-sheet.ts';
import { curveUpTo } from './predicted-curve.ts';
import { DRY_THREAD } from './sheets.ts';
import { there } from './there.ts';

const results = evaluateWorksheet(OTTERSLEIGH_SHEET);
const predicted = there(results.predicted);
const measured = there(results.measured);
const zero = there(results.zero);
const line = there(results.line);
const screw = there(results.screw);
const own = there(results.efficiency);
const { friction, dragTorque: drag = 0 } = OTTERSLEIGH_SHEET.tensioner;
const { youngsModulus, gaugeLength, misalignment } = measured.operands;
const perStretch = youngsModulus / (gaugeLength * misalignment);
const atZero = perStretch * zero.zero;

/** One reading of the series, as a stress counted from the first reading. */
export type StressReading = Pick<
  MeasuredPoint,
  'torque' | 'stress' | 'sdTorque' | 'sdStress' | 'inToe'
>;

/** Stress in Pa for each metre that the dial moves, E/(L₀·fₐ). */
export const stressPerStretch = perStretch;

/** Where no tension is, as a stress counted from the first reading. */
export const zeroStress = atZero;

/** The readings as stresses counted from the first reading. */
export const readings: readonly StressReading[] = there(results.points).points.map(
  ({ torque, stress, sdTorque, sdStress, inToe }) => ({
    torque,
    stress: atZero + stress,
    sdTorque,
    sdStress,
    inToe,
  }),
);

/** The prediction over torque, as far as the plots go. */
export const theoryCurve = curveUpTo(OTTERSLEIGH_SHEET, 16);

/** What the model of the lesson gives whatever the reader sets, by the names of its outputs. */
export const known = {
  topTorque: measured.topTorque,
  drag,
  lead: leadOf(screw.drive) ?? 0,
  area: predicted.operands.area,
  frictionLow: friction.low ?? 0,
  frictionHigh: friction.high ?? 0,
  dryFrictionLow: DRY_THREAD.low,
  dryFrictionHigh: DRY_THREAD.high,
  predictedEfficiency: screw.efficiency,
  predictedEfficiencyLow: screw.efficiencyLow,
  predictedEfficiencyHigh: screw.efficiencyHigh,
  predictedStress: predicted.stress,
  predictedExpanded: predicted.expandedUncertainty,
  predictedLow: predicted.low,
  predictedHigh: predicted.high,
  agreement: there(results.agreement).agreementNumber,
  measuredStress: measured.stress,
  measuredExpanded: measured.expandedUncertainty,
  measuredLow: measured.low,
  measuredHigh: measured.high,
  gaugeLength,
  youngsModulus,
  stretch: zero.stretch.stretch,
  zeroBelow: -zero.zero,
  zeroBelowLeast: -zero.high,
  zeroBelowMost: -zero.low,
  slope: measured.slope,
  ownEfficiency: own.efficiency,
  ownExpanded: own.high - own.efficiency,
  ownLow: own.low,
  ownHigh: own.high,
  ownShare: own.standardUncertainty / own.efficiency,
  targetStress: there(results.setting).stress,
  settingTorque: there(results.setting).torque,
  yorkSlope: line.slope,
  yorkShare: line.sdSlope / line.slope,
  yorkIntercept: atZero + line.intercept,
  yorkScatter: line.meanSquare,
  readingsUsed: line.readingsUsed,
  readingsTaken: readings.length,
  impliedDrag: -(atZero + line.intercept) / line.slope,
};
