import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mixtureQuantile, mixtureSummary } from '../../../src/core/statistics/student-mixture.ts';
import { tCdf, tQuantile } from '../../../src/core/student.ts';
import { evenly } from '../../evenly.ts';

const one = [{ weight: 1, centre: 3, scale: 2 }];
const two = [
  { weight: 0.3, centre: -1, scale: 0.5 },
  { weight: 0.7, centre: 2, scale: 1 },
];

describe('mixtureSummary', () => {
  it('of one part is that part: sd = scale·√(ν/(ν − 2)), definition of Student', () => {
    const { value, deviation, low, high } = mixtureSummary(one, 10, 0.95);
    expect(value).toBe(3);
    expect(deviation).toBeCloseTo(2 * Math.sqrt(10 / 8), 14);
    expect(low).toBeCloseTo(3 - 2 * tQuantile(0.975, 10), 12);
    expect(high).toBeCloseTo(3 + 2 * tQuantile(0.975, 10), 12);
  });
  it('counts how far the parts lie apart', () => {
    const { value, deviation } = mixtureSummary(two, 1e7, 0.95);
    expect(value).toBeCloseTo(1.1, 14);
    expect(deviation ** 2).toBeCloseTo(0.3 * 0.25 + 0.7 + 0.3 * 0.7 * 9, 6);
  });
  it('refuses degrees of freedom that give no standard deviation', () =>
    expect(() => mixtureSummary(one, 2, 0.95)).toThrow('degreesOfFreedom less 2 must be above 0'));
});

describe('mixtureQuantile', () => {
  it('undoes the distribution', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), (probability) => {
        const value = mixtureQuantile(two, 5, probability);
        const below = two.reduce(
          (sum, part) => sum + part.weight * tCdf((value - part.centre) / part.scale, 5),
          0,
        );
        expect(below).toBeCloseTo(probability, 12);
      }),
    ));
  it('of equal parts is that of one, at any scale', () =>
    fc.assert(
      fc.property(evenly(-12, 12), evenly(0.01, 0.99), (decades, probability) => {
        const scale = 10 ** decades;
        const parts = [0.1, 0.2, 0.3, 0.4].map((weight) => ({ weight, centre: 0, scale }));
        const value = mixtureQuantile(parts, 5, probability);
        expect(value / scale).toBeCloseTo(tQuantile(probability, 5), 10);
      }),
    ));
});
