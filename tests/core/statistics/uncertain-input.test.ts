import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  inputDegreesOfFreedom,
  standardUncertainty,
} from '../../../src/core/statistics/uncertain-input.ts';
import { evenly } from '../../evenly.ts';

const bounds = { value: 10, halfWidth: 5 };

describe('standardUncertainty', () => {
  it.each([
    ['rectangular', Math.sqrt(3)],
    ['triangular', Math.sqrt(6)],
    ['arcsine', Math.SQRT2],
    ['ends', 1],
  ] as const)('of %s bounds is the half-width over %s (GUM 4.3.7, 4.3.9)', (shape, divisor) =>
    expect(standardUncertainty({ ...bounds, shape })).toBeCloseTo(5 / divisor, 14),
  );
  it('is what is given, otherwise', () => {
    expect(standardUncertainty({ value: 0, standardUncertainty: 2 })).toBe(2);
    const deviation = { value: 0, standardDeviation: 3, degreesOfFreedom: 5 };
    expect(standardUncertainty(deviation)).toBe(3);
  });
  it('grows with the half-width', () =>
    fc.assert(
      fc.property(evenly(0, 1e6), (halfWidth) => {
        const u = standardUncertainty({ value: 0, halfWidth, shape: 'triangular' });
        expect(
          standardUncertainty({ value: 0, halfWidth: 2 * halfWidth, shape: 'triangular' }),
        ).toBeCloseTo(2 * u, 6);
      }),
    ));
  it('refuses what is below 0 or not finite, and a deviation with 2 degrees of freedom', () => {
    expect(() => standardUncertainty({ value: 0, standardUncertainty: -1 })).toThrow(
      'standardUncertainty must be at least 0 (was -1)',
    );
    expect(() => standardUncertainty({ ...bounds, halfWidth: -1, shape: 'arcsine' })).toThrow(
      'halfWidth must be at least 0 (was -1)',
    );
    expect(() => standardUncertainty({ value: Number.NaN, standardUncertainty: 1 })).toThrow(
      /value/,
    );
    const deviation = { value: 0, standardDeviation: 3, degreesOfFreedom: 2 };
    expect(() => standardUncertainty(deviation)).toThrow('degreesOfFreedom less 2 must be above 0');
    expect(() => standardUncertainty({ ...deviation, standardDeviation: -3 })).toThrow(
      'standardDeviation must be at least 0 (was -3)',
    );
  });
});

describe('inputDegreesOfFreedom', () => {
  it('is Infinity unless given', () => {
    expect(inputDegreesOfFreedom({ ...bounds, shape: 'arcsine' })).toBe(Infinity);
    expect(inputDegreesOfFreedom({ value: 0, standardUncertainty: 1 })).toBe(Infinity);
    expect(inputDegreesOfFreedom({ value: 0, standardUncertainty: 1, degreesOfFreedom: 4 })).toBe(
      4,
    );
  });
  it('refuses 0', () =>
    expect(() =>
      inputDegreesOfFreedom({ value: 0, standardUncertainty: 1, degreesOfFreedom: 0 }),
    ).toThrow('degreesOfFreedom must be above 0 (was 0)'));
});
