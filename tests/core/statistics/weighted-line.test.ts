import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitLine } from '../../../src/core/line.ts';
import { weightedLine } from '../../../src/core/statistics/weighted-line.ts';
import { evenly } from '../../evenly.ts';
import { pearson } from '../fixtures/pearson.ts';

const points = {
  x: [0, 1, 2, 3, 4],
  y: [0.1, 0.9, 2.2, 2.8, 4.1],
  sdX: [0.1, 0.1, 0.2, 0.1, 0.1],
  sdY: [0.2, 0.1, 0.1, 0.3, 0.1],
  correlation: [0, 0.5, -0.5, 0, 0],
};
type Points = typeof points;
const york: Points = { ...pearson, correlation: pearson.x.map(() => 0) };

/** The points with y + tilt·x in place of y: what was uncorrelated now is correlated. */
function sheared({ x, y, sdX, sdY }: Points, tilt: number): Points {
  const spread = sdX.map((sx, i) => Math.hypot(sdY[i] as number, tilt * sx));
  return {
    x,
    y: y.map((value, i) => value + tilt * (x[i] as number)),
    sdX,
    sdY: spread,
    correlation: sdX.map((sx, i) => (tilt * sx) / (spread[i] as number)),
  };
}

describe('weightedLine', () => {
  it('agrees with York et al. 2004, table II, in all that it prints', () => {
    const line = weightedLine(york, fitLine(york.x, york.y).slope);
    expect(line.intercept).toBeCloseTo(5.479910224, 9);
    expect(line.slope).toBeCloseTo(-0.480533407, 9);
    expect(line.sdIntercept).toBeCloseTo(0.294970735, 8);
    expect(line.sdSlope).toBeCloseTo(0.057985009, 9);
    expect(line.weightedResidualSum / 8).toBeCloseTo(1.483294149, 8);
  });

  // Weights of 1/(1 + 1) each, adjusted x where they stand: 1/Σ½(x − 2)² = 1, √(2/3 + 2²·1).
  it('answers 3 points on y = 2 + x with deviations of 1, by hand', () => {
    const ones = [1, 1, 1];
    const line = weightedLine(
      { x: [1, 2, 3], y: [3, 4, 5], sdX: ones, sdY: ones, correlation: [0, 0, 0] },
      0.7,
    );
    expect(line.intercept).toBeCloseTo(2, 12);
    expect(line.slope).toBeCloseTo(1, 12);
    expect(line.sdSlope).toBeCloseTo(1, 12);
    expect(line.sdIntercept).toBeCloseTo(Math.sqrt(14 / 3), 12);
    expect(line.covariance).toBeCloseTo(-2, 12);
    expect(line.weightedResidualSum).toBeCloseTo(0, 20);
  });

  it('tilts with the points: errors that a tilt has correlated count no otherwise', () => {
    const plain = weightedLine(york, -0.5);
    fc.assert(
      fc.property(evenly(-3, 3), (tilt) => {
        const tilted = weightedLine(sheared(york, tilt), tilt - 0.5);
        expect(tilted.slope).toBeCloseTo(plain.slope + tilt, 9);
        expect(tilted.intercept).toBeCloseTo(plain.intercept, 9);
        expect(tilted.sdSlope).toBeCloseTo(plain.sdSlope, 9);
        expect(tilted.sdIntercept).toBeCloseTo(plain.sdIntercept, 9);
        expect(tilted.covariance).toBeCloseTo(plain.covariance, 9);
        expect(tilted.weightedResidualSum).toBeCloseTo(plain.weightedResidualSum, 8);
      }),
    );
  });

  it('moves with the origin: x + a takes a·slope from the intercept, and nothing else changes', () => {
    const plain = weightedLine(points, 1);
    fc.assert(
      fc.property(evenly(-20, 20), evenly(-20, 20), (a, b) => {
        const moved = weightedLine(
          { ...points, x: points.x.map((x) => x + a), y: points.y.map((y) => y + b) },
          1,
        );
        expect(moved.slope).toBeCloseTo(plain.slope, 9);
        expect(moved.intercept).toBeCloseTo(plain.intercept + b - a * plain.slope, 9);
        expect(moved.sdSlope).toBeCloseTo(plain.sdSlope, 9);
        expect(moved.covariance).toBeCloseTo(plain.covariance - a * plain.sdSlope ** 2, 9);
        expect(moved.weightedResidualSum).toBeCloseTo(plain.weightedResidualSum, 8);
      }),
    );
  });

  it.each([1e-9, 1e6])('is as exact where y is %s times as large', (factor) => {
    const scaled = (list: readonly number[]) => list.map((value) => factor * value);
    const plain = weightedLine(points, 1);
    const line = weightedLine({ ...points, y: scaled(points.y), sdY: scaled(points.sdY) }, 0);
    expect(line.slope / factor / plain.slope).toBeCloseTo(1, 12);
    expect(line.intercept / factor).toBeCloseTo(plain.intercept, 12);
    expect(line.sdSlope / factor / plain.sdSlope).toBeCloseTo(1, 12);
    expect(line.weightedResidualSum).toBeCloseTo(plain.weightedResidualSum, 9);
  });

  it('comes to the same line from a poor first guess', () => {
    const near = weightedLine(points, fitLine(points.x, points.y).slope);
    const far = weightedLine(points, 5);
    expect(far.slope).toBeCloseTo(near.slope, 12);
    expect(far.intercept).toBeCloseTo(near.intercept, 12);
  });
  it('weighs a point by both of its errors: a point without weight changes nothing', () => {
    const all = weightedLine(points, 1);
    const more = weightedLine(
      {
        x: [...points.x, 2],
        y: [...points.y, 50],
        sdX: [...points.sdX, 1e9],
        sdY: [...points.sdY, 1e9],
        correlation: [...points.correlation, 0],
      },
      1,
    );
    expect(more.slope).toBeCloseTo(all.slope, 9);
    expect(more.sdSlope).toBeCloseTo(all.sdSlope, 9);
  });
  it('settles in few steps', () => {
    let looks = 0;
    const counted = {
      ...york,
      get x() {
        looks += 1;
        return york.x;
      },
    };
    weightedLine(counted, -0.5);
    expect(looks).toBeLessThan(30);
  });
  it('ends where errors larger than the whole picture let no slope settle', () => {
    const vague = { x: [0, 1, 2], y: [1, 1, 0], sdX: [1, 3, 10], sdY: [3, 2, 3] };
    const line = weightedLine({ ...vague, correlation: [0, 0, 0] }, 1);
    expect(Number.isFinite(line.slope)).toBe(true);
    expect(line.settled).toBe(false);
    expect(weightedLine(york, -0.5).settled).toBe(true);
  });
});
