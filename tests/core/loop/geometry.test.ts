import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  freeStrand,
  loopLength,
  loopLengthEqual,
  smallerWheelWrap,
  strandHalfAngle,
} from '../../../src/core/loop/geometry.ts';

const wheels = { wheelDiameter1: 0.7, wheelDiameter2: 0.5, centreDistance: 1.4 };
const diameter = fc.double({ min: 0.2, max: 1.2, noNaN: true });
const gap = fc.double({ min: 0.05, max: 3, noNaN: true });
const anyWheels = fc
  .tuple(diameter, diameter, gap)
  .map(([wheelDiameter1, wheelDiameter2, clear]) => ({
    wheelDiameter1,
    wheelDiameter2,
    centreDistance: (wheelDiameter1 + wheelDiameter2) / 2 + clear,
  }));

/** Length of the loop by walking round its outline in small straight steps: no formula of ours. */
function walkedLength(radius1: number, radius2: number, centre: number): number {
  const outward = Array.from({ length: 200_001 }, (_, i) => (i * 2 * Math.PI) / 200_000);
  const corner = (angle: number): [number, number] => {
    const first = radius1;
    const second = radius2 + centre * Math.cos(angle);
    const [radius, middle] = second > first ? [radius2, centre] : [radius1, 0];
    return [middle + radius * Math.cos(angle), radius * Math.sin(angle)];
  };
  const points = outward.map(corner);
  return points.reduce((length, [x, y], i) => {
    const [beforeX, beforeY] = points[Math.max(0, i - 1)] as [number, number];
    return length + Math.hypot(x - beforeX, y - beforeY);
  }, 0);
}

describe('strandHalfAngle', () => {
  it('has the sine (D₁ − D₂)/2C: 0.2 over 2.8, derived here', () =>
    expect(Math.sin(strandHalfAngle(wheels))).toBeCloseTo(0.2 / 2.8, 14));
  it('is nothing for equal wheels', () =>
    expect(strandHalfAngle({ ...wheels, wheelDiameter2: 0.7 })).toBe(0));
  it('does not mind which wheel comes first', () =>
    expect(strandHalfAngle({ ...wheels, wheelDiameter1: 0.5, wheelDiameter2: 0.7 })).toBe(
      strandHalfAngle(wheels),
    ));
  it.each([
    [{ wheelDiameter1: 0 }, /wheelDiameter1 must be above 0 m/],
    [{ wheelDiameter2: Number.NaN }, /wheelDiameter2 must be above 0 m/],
    [{ centreDistance: -1 }, /centreDistance must be above 0 m/],
    [{ centreDistance: 0.6 }, /mean wheel diameter must be below 0.6 m \(was 0.6\)/],
  ])('refuses %o', (wrong, message) =>
    expect(() => strandHalfAngle({ ...wheels, ...wrong })).toThrow(message),
  );
});

describe('loopLength', () => {
  it('is the length found by walking round two unequal wheels', () => {
    const walked = walkedLength(0.35 + 0.0006, 0.25 + 0.0006, 1.4);
    expect(loopLength({ ...wheels, thickness: 0.0012 })).toBeCloseTo(walked, 8);
  });
  it('on equal wheels is 2C + π(D + t)', () => {
    const equal = { wheelDiameter: 0.48, centreDistance: 1.25, thickness: 0.0011 };
    const same = { wheelDiameter1: 0.48, wheelDiameter2: 0.48, centreDistance: 1.25 };
    expect(loopLengthEqual(equal)).toBeCloseTo(loopLength({ ...same, thickness: 0.0011 }), 14);
    expect(loopLengthEqual(equal)).toBeCloseTo(2.5 + Math.PI * 0.4811, 14);
  });
  it('grows by 2·cos β for each unit of centre distance (virtual work gives the wheel force)', () =>
    fc.assert(
      fc.property(anyWheels, (pair) => {
        const at = (centreDistance: number) =>
          loopLength({ ...pair, centreDistance, thickness: 0.001 });
        const step = 1e-5;
        const rate = (at(pair.centreDistance + step) - at(pair.centreDistance - step)) / (2 * step);
        expect(rate).toBeCloseTo(2 * Math.cos(strandHalfAngle(pair)), 6);
      }),
    ));
  it('refuses no thickness and wheels that overlap', () => {
    expect(() => loopLength({ ...wheels, thickness: 0 })).toThrow(/thickness must be above 0 m/);
    const equal = { wheelDiameter: 0.5, centreDistance: 1.2, thickness: 0.001 };
    expect(() => loopLengthEqual({ ...equal, thickness: -1 })).toThrow(
      /thickness must be above 0 m/,
    );
    expect(() => loopLengthEqual({ ...equal, centreDistance: 0.5 })).toThrow(
      /mean wheel diameter must be below 0.5 m/,
    );
  });
});

describe('freeStrand and smallerWheelWrap', () => {
  it('are the centre distance and half a turn on equal wheels', () => {
    const equal = { ...wheels, wheelDiameter2: 0.7 };
    expect(freeStrand(equal)).toBe(1.4);
    expect(smallerWheelWrap(equal)).toBe(Math.PI);
  });
  it('close the triangle: the strand is square to both radii, by Pythagoras', () =>
    expect(freeStrand(wheels)).toBeCloseTo(Math.sqrt(1.4 ** 2 - 0.1 ** 2), 12));
  it('wrap the smaller wheel by less than half a turn', () =>
    fc.assert(
      fc.property(anyWheels, (pair) => {
        expect(smallerWheelWrap(pair)).toBeLessThanOrEqual(Math.PI);
        expect(freeStrand(pair)).toBeLessThanOrEqual(pair.centreDistance);
      }),
    ));
});
