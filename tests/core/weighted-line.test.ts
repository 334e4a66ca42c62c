import { describe, expect, it } from 'vitest';
import { fitLine } from '../../src/core/line.ts';
import { weightedLine } from '../../src/core/weighted-line.ts';

const points = {
  x: [0, 1, 2, 3, 4],
  y: [0.1, 0.9, 2.2, 2.8, 4.1],
  sdX: [0.1, 0.1, 0.2, 0.1, 0.1],
  sdY: [0.2, 0.1, 0.1, 0.3, 0.1],
  correlation: [0, 0.5, -0.5, 0, 0],
};

describe('weightedLine', () => {
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
});
