/**
 * The worksheet's readings as stresses, and the straight line through those that are out of the toe.
 * Units: SI only (Pa, N·m).
 * Source: York, Evensen, Martinez and De Basabe Delgado, Am. J. Phys. 72 (2004) 367; reading
 * a wrench or gauge, own-assumptions.ts.
 */

import { fitLineBothErrors } from '../../line.ts';
import { readLoadDoubt } from '../load.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import type { StressScale } from './stress.ts';
import type { ZeroResult } from './zero.ts';
import { zeroOfSeries } from './zero.ts';

/** One reading as a stress above the zero. */
export interface MeasuredPoint {
  readonly row: number; // place in worksheet.readings
  readonly series: number; // its number
  readonly torque: number; // N·m
  readonly turns: number | undefined; // turns of the screw
  readonly stress: number; // Pa, 0 at the zero of its series; below it while the band still straightens
  readonly sdTorque: number; // N·m
  readonly sdStress: number; // Pa, repeatability of the dial alone
  readonly inToe: boolean; // not in the line
}

/** All readings above the drag torque. */
export interface PointsResult {
  readonly points: readonly MeasuredPoint[];
}

/** The line stress = intercept + slope·torque with errors in both. */
export interface LineResult {
  readonly intercept: number; // Pa
  readonly slope: number; // Pa per N·m
  readonly sdIntercept: number; // Pa, times √meanSquare where rescaled
  readonly sdSlope: number; // Pa per N·m, likewise
  readonly readingsUsed: number;
  readonly meanSquare: number; // MSWD: near 1 where the errors explain the scatter
  readonly rescaled: boolean;
}

// Of the repeatability: a toe above it keeps its reading out of the line.
const toeShare = 0.6;

const mostMeanSquare = 1.5;
const fewestReadings = 3;

/** Readings as stresses, with the errors of wrench and dial. */
export function worksheetPoints(
  zeroOutcome: Outcome<ZeroResult>,
  scale: Outcome<StressScale>,
): Outcome<PointsResult> {
  return whenReady({ zero: zeroOutcome, scale }, ({ zero, scale }) => {
    const { youngsModulus, gaugeLength, misalignment } = scale;
    const perMetre = youngsModulus.value / (gaugeLength.value * misalignment.value);
    const points = zero.rows.map((row, i) => {
      const torque = zero.torques[i] as number;
      return {
        row,
        series: zero.series[i] as number,
        torque,
        turns: zero.turns[i],
        stress:
          perMetre *
          ((zero.elongations[i] as number) - zeroOfSeries(zero, zero.series[i] as number).zero),
        sdTorque: readLoadDoubt(zero.loadReading, torque),
        sdStress: perMetre * zero.repeatability,
        inToe: Math.abs(zero.toe[i] as number) >= toeShare * zero.repeatability,
      };
    });
    return ready({ points });
  });
}

/**
 * York's line through the points out of the toe; refused with fewer than three torques (`tooFewStraight`), and where the
 * errors let no slope settle (`noLine`).
 */
export function worksheetLine(pointsOutcome: Outcome<PointsResult>): Outcome<LineResult> {
  return whenReady({ points: pointsOutcome }, ({ points: { points } }) => {
    const used = points.filter((point) => !point.inToe);
    const levels = new Set(used.map(({ torque }) => torque)).size;
    if (levels < fewestReadings) return refused('tooFewStraight', { levels }, ['readings']);
    const line = fitLineBothErrors({
      x: used.map(({ torque }) => torque),
      y: used.map(({ stress }) => stress),
      sdX: used.map(({ sdTorque }) => sdTorque),
      sdY: used.map(({ sdStress }) => sdStress),
    });
    if (!line.settled) return refused('noLine', {}, ['readings']);
    const meanSquare = line.weightedResidualSum / (used.length - 2);
    const rescaled = meanSquare > mostMeanSquare;
    const widening = rescaled ? Math.sqrt(meanSquare) : 1;
    return ready({
      intercept: line.intercept,
      slope: line.slope,
      sdIntercept: widening * line.sdIntercept,
      sdSlope: widening * line.sdSlope,
      readingsUsed: used.length,
      meanSquare,
      rescaled,
    });
  });
}
