import { describe, expect, it } from 'vitest';
import { combinedVariance } from '../../../src/core/statistics/correlated-groups.ts';

const shares = new Map([
  ['a', { signed: 3, degreesOfFreedom: 4 }],
  ['b', { signed: -4, degreesOfFreedom: 9 }],
  ['c', { signed: 12, degreesOfFreedom: Number.POSITIVE_INFINITY }],
]);

describe('combinedVariance', () => {
  it('adds squares, and degrees of freedom by Welch-Satterthwaite', () => {
    const { variance, degreesOfFreedom } = combinedVariance(shares, []);
    expect(variance).toBe(169);
    expect(degreesOfFreedom).toBeCloseTo(169 ** 2 / (81 / 4 + 256 / 9), 9);
  });
  it('agrees with the example of GUM G.4.1: relative 0.25, 0.57, 0.82 % give 19.0', () => {
    const product = new Map([
      ['x1', { signed: 0.25, degreesOfFreedom: 9 }],
      ['x2', { signed: 0.57, degreesOfFreedom: 4 }],
      ['x3', { signed: 0.82, degreesOfFreedom: 14 }],
    ]);
    const { variance, degreesOfFreedom } = combinedVariance(product, []);
    expect(Math.sqrt(variance)).toBeCloseTo(1.03, 2);
    expect(degreesOfFreedom).toBeCloseTo(19, 1);
  });
  it('adds amounts, with their signs, where the inputs move together', () => {
    expect(combinedVariance(shares, [['a', 'b', 1]]).variance).toBe(1 + 144);
    expect(combinedVariance(shares, [['b', 'a', -1]]).variance).toBe(49 + 144);
    const all = combinedVariance(shares, [
      ['a', 'b', 1],
      ['b', 'c', 1],
      ['a', 'c', 1],
    ]);
    expect(all.variance).toBe(11 ** 2);
  });
  it('counts inputs that move together as one, with the fewest degrees of freedom', () =>
    expect(
      combinedVariance(new Map([...shares].slice(0, 2)), [['a', 'b', 0.5]]).degreesOfFreedom,
    ).toBe(4));
  it('has no limit of freedom without uncertainty', () => {
    const exact = new Map([['a', { signed: 0, degreesOfFreedom: 3 }]]);
    expect(combinedVariance(exact, [])).toEqual({
      variance: 0,
      degreesOfFreedom: Number.POSITIVE_INFINITY,
    });
  });
  it.each([1, 1e-9, 1e9])('lets rounding pass where all cancels, in amounts of %s', (amount) => {
    const third = new Map([
      ['a', { signed: 0.1 * amount, degreesOfFreedom: 3 }],
      ['b', { signed: 0.2 * amount, degreesOfFreedom: 3 }],
      ['c', { signed: 0.3 * amount, degreesOfFreedom: 3 }],
    ]);
    const { variance } = combinedVariance(third, [
      ['a', 'b', 1],
      ['b', 'c', -1],
      ['a', 'c', -1],
    ]);
    expect(Math.sqrt(variance) / amount).toBeCloseTo(0, 7);
  });
  it('refuses correlations out of range, or of no input', () => {
    expect(() => combinedVariance(shares, [['a', 'b', 1.5]])).toThrow(
      'correlation of a and b must be between -1 and 1 (was 1.5)',
    );
    expect(() => combinedVariance<string>(shares, [['a', 'd', 0.5]])).toThrow(
      'correlation must be of inputs (was a, d)',
    );
  });
  it.each([1, 1e-9])(
    'refuses correlations that contradict each other, in amounts of %s',
    (signed) => {
      const equal = new Map(['a', 'b', 'c'].map((n) => [n, { signed, degreesOfFreedom: 3 }]));
      expect(() =>
        combinedVariance(equal, [
          ['a', 'b', -1],
          ['b', 'c', -1],
          ['a', 'c', -1],
        ]),
      ).toThrow('combined variance must be at least');
    },
  );
});
