/**
 * Straight lines through points: errors in y only, or in both.
 * Units: those of x and y.
 * Source: definition (least squares about the mean); York, Evensen, Martinez and De Basabe Delgado,
 * Am. J. Phys. 72 (2004) 367. Checked against NIST StRD (Norris) and their table II.
 */
import { assertAtLeast, assertBelow, assertList, assertPositive } from './assert.ts';
import { mean, sum } from './statistics/moments.ts';
import {
  type FittedLineBothErrors,
  type UncertainPoints,
  weightedLine,
} from './statistics/weighted-line.ts';

export type { FittedLineBothErrors } from './statistics/weighted-line.ts';

/** Line y = intercept + slope·x by least squares; sd are standard deviations of the two. */
export interface FittedLine {
  readonly intercept: number;
  readonly slope: number;
  readonly sdIntercept: number;
  readonly sdSlope: number;
  readonly covariance: number; // of intercept and slope
  readonly residualSd: number;
  readonly degreesOfFreedom: number; // n − 2
}

/**
 * Least squares with errors in y alone: slope = Σ(x − x̄)(y − ȳ)/Σ(x − x̄)², intercept at x = 0.
 * x, y (n), unsorted. @throws RangeError with fewer than 3 points, or all at one x, or not finite
 */
export function fitLine(x: readonly number[], y: readonly number[]): FittedLine {
  const count = x.length;
  assertAtLeast('number of points', count, 3);
  assertList('x', x, count);
  assertList('y', y, count);
  const [meanX, meanY] = [mean(x), mean(y)];
  const dx = x.map((value) => value - meanX);
  const dy = y.map((value) => value - meanY);
  const squares = sum(dx.map((d) => d * d));
  assertPositive('spread of x', squares);
  const slope = sum(dx.map((d, i) => d * (dy[i] as number))) / squares;
  const residuals = dx.map((d, i) => (dy[i] as number) - slope * d);
  const degreesOfFreedom = count - 2;
  const residualSd = Math.sqrt(sum(residuals.map((r) => r * r)) / degreesOfFreedom);
  const sdSlope = residualSd / Math.sqrt(squares);
  return {
    intercept: meanY - slope * meanX,
    slope,
    sdIntercept: Math.hypot(residualSd / Math.sqrt(count), meanX * sdSlope),
    sdSlope,
    covariance: -meanX * sdSlope * sdSlope,
    residualSd,
    degreesOfFreedom,
  };
}

/**
 * York's line: errors in both coordinates, correlated or not, each point by its own weight.
 * @throws RangeError with fewer than 3 points, all at one x, a deviation not above 0, or |r| ≥ 1
 */
export function fitLineBothErrors(points: UncertainPoints): FittedLineBothErrors {
  const { x, y, sdX, sdY, correlation = x.map(() => 0) } = points;
  const start = fitLine(x, y).slope;
  assertList('sdX', sdX, x.length);
  assertList('sdY', sdY, x.length);
  assertList('correlation', correlation, x.length);
  for (const [i, sd] of sdX.entries()) assertPositive(`sdX[${i}]`, sd);
  for (const [i, sd] of sdY.entries()) assertPositive(`sdY[${i}]`, sd);
  for (const [i, r] of correlation.entries()) assertBelow(`size of correlation[${i}]`, r * r, 1);
  return weightedLine({ x, y, sdX, sdY, correlation }, start);
}
