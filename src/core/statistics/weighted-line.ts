/**
 * The iteration behind the line with errors in both coordinates.
 * Units: those of x and y.
 * Source: York, Evensen, Martinez and De Basabe Delgado, Am. J. Phys. 72 (2004) 367, equations 13.
 */
import { sum } from './moments.ts';

const TOLERANCE = 1e-14; // share of the slope by which the last step may still move it
const SETTLED = 1e-9; // a slope that still moves more than that after all steps has found no place
const LONGEST_ITERATION = 500;

/** Points with a standard uncertainty along each axis; all lists (n). */
export interface UncertainPoints {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly sdX: readonly number[]; // unit of x, > 0
  readonly sdY: readonly number[]; // unit of y, > 0
  readonly correlation?: readonly number[]; // of the two errors of a point, −1 to 1; none by default
}

/** Line through points with errors in both; nothing is rescaled by the scatter found. */
export interface FittedLineBothErrors {
  readonly intercept: number;
  readonly slope: number;
  readonly sdIntercept: number;
  readonly sdSlope: number;
  readonly covariance: number; // of intercept and slope
  readonly weightedResidualSum: number; // S = Σ W(y − intercept − slope·x)²; expected n − 2
  readonly settled: boolean; // false where errors as large as the picture let the slope wander
}

/** Weights and adjusted distances of the points for one trial slope. */
interface Adjustment {
  readonly meanX: number; // weighted
  readonly meanY: number;
  readonly weights: readonly number[];
  readonly shifts: readonly number[]; // β: adjusted x less the weighted mean of x
  readonly slope: number; // the better one that follows
}

function weightedMean(values: readonly number[], weights: readonly number[]): number {
  return sum(values.map((value, i) => value * (weights[i] as number))) / sum(weights);
}

function adjust(points: Required<UncertainPoints>, slope: number): Adjustment {
  const { x, y, sdX, sdY, correlation } = points;
  // York's W, β written with deviations in place of weights: W = 1/(sy² + b²·sx² − 2·b·r·sx·sy).
  const mixed = sdX.map((sx, i) => (correlation[i] as number) * sx * (sdY[i] as number));
  const weights = sdX.map(
    (sx, i) => 1 / ((sdY[i] as number) ** 2 + (slope * sx) ** 2 - 2 * slope * (mixed[i] as number)),
  );
  const [meanX, meanY] = [weightedMean(x, weights), weightedMean(y, weights)];
  const dx = x.map((value) => value - meanX);
  const dy = y.map((value) => value - meanY);
  const shifts = dx.map((u, i) => {
    const v = dy[i] as number;
    const along = u * (sdY[i] as number) ** 2 + slope * v * (sdX[i] as number) ** 2;
    return (weights[i] as number) * (along - (slope * u + v) * (mixed[i] as number));
  });
  const pulls = shifts.map((shift, i) => shift * (weights[i] as number));
  const rise = sum(pulls.map((pull, i) => pull * (dy[i] as number)));
  const run = sum(pulls.map((pull, i) => pull * (dx[i] as number)));
  return { meanX, meanY, weights, shifts, slope: rise / run };
}

/** York's line from a first guess of its slope; the points must have been checked. */
export function weightedLine(
  points: Required<UncertainPoints>,
  firstSlope: number,
): FittedLineBothErrors {
  let last = firstSlope;
  let now = adjust(points, last);
  for (
    let step = 1;
    step < LONGEST_ITERATION && Math.abs(now.slope - last) > TOLERANCE * Math.abs(now.slope);
    step += 1
  ) {
    last = now.slope;
    now = adjust(points, last);
  }
  const { slope, weights, meanX, meanY } = now;
  const intercept = meanY - slope * meanX;
  const middle = weightedMean(now.shifts, weights);
  const varianceSlope =
    1 / sum(now.shifts.map((shift, i) => (weights[i] as number) * (shift - middle) ** 2));
  const adjustedMean = meanX + middle;
  const residuals = points.y.map((value, i) => value - intercept - slope * (points.x[i] as number));
  return {
    intercept,
    slope,
    sdIntercept: Math.sqrt(1 / sum(weights) + adjustedMean ** 2 * varianceSlope),
    sdSlope: Math.sqrt(varianceSlope),
    covariance: -adjustedMean * varianceSlope,
    weightedResidualSum: sum(residuals.map((r, i) => (weights[i] as number) * r * r)),
    settled: Math.abs(slope - last) <= SETTLED * Math.abs(slope),
  };
}
