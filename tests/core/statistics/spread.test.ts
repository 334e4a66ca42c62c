/** The spread of a class: by hand for a small one, by chi-squared tables for its limit, by simulation for its rate of false alarms. */
import { describe, expect, it } from 'vitest';
import { spreadOf } from '../../../src/core/agreement.ts';
import { randomSource } from '../../../src/core/random.ts';

const alike = (values: readonly number[], standard = 1) =>
  values.map((value) => ({ value, standard }));

describe('the spread of results', () => {
  it('is the standard deviation over the uncertainty where all are equally uncertain', () => {
    const { mean, standardDeviation, expected, ratio, furthest } = spreadOf(alike([1, 2, 6], 2));
    expect(mean).toBe(3);
    expect(standardDeviation).toBeCloseTo(Math.sqrt(7), 12);
    expect(expected).toBeCloseTo(2, 12);
    expect(ratio).toBeCloseTo(Math.sqrt(7) / 2, 12);
    expect(furthest).toBe(2);
  });

  it('weighs each by its own uncertainty', () => {
    const results = [
      { value: 10, standard: 1 },
      { value: 13, standard: 2 },
    ];
    const found = spreadOf(results);
    // About 10.6: (0.6/1)² + (2.4/2)² = 0.36 + 1.44, over 1.
    expect(found.ratio).toBeCloseTo(Math.sqrt(1.8), 12);
    expect(found.expected).toBeCloseTo(Math.sqrt(2.5), 12);
  });

  it('names who adds most, not who is merely far and knows it', () => {
    const results = [...alike([10, 10, 11.5], 0.2), { value: 14, standard: 5 }];
    expect(spreadOf(results).furthest).toBe(2);
  });

  it('is nothing where all say the same', () =>
    expect(spreadOf(alike([5, 5, 5]))).toMatchObject({ standardDeviation: 0, ratio: 0 }));

  // Upper 2.5 % points of chi-squared, as printed in any table of it; from memory.
  it.each([
    [1, 5.024, 0.04],
    [2, 7.378, 0.01],
    [9, 19.023, 0.003],
    [24, 39.364, 0.002],
  ])('has with %i degrees of freedom the limit of chi-squared %f', (freedom, table, share) => {
    const { limit } = spreadOf(alike(Array.from({ length: freedom + 1 }, (_, at) => at)));
    expect(Math.abs(limit ** 2 / (table / freedom) - 1)).toBeLessThan(share);
  });

  it('finds a mistake in one of twenty classes without any, for it looks twice', () => {
    const { normal } = randomSource(11);
    const classes = Array.from({ length: 4000 }, () =>
      spreadOf(
        Array.from({ length: 12 }, (_, at) => ({
          value: 100 + (1 + at / 6) * normal(),
          standard: 1 + at / 6,
        })),
      ),
    );
    const { length } = classes;
    const passed = classes.filter(({ ratio, limit }) => ratio > limit).length / length;
    // Three standard errors of 4000 classes.
    expect(Math.abs(passed - 0.025)).toBeLessThan(0.0075);
    const unexplained = classes.filter(({ isExplained }) => !isExplained).length / length;
    expect(unexplained).toBeGreaterThan(passed);
    expect(unexplained).toBeLessThan(0.05 + 0.0105);
  });

  it('is not explained where one of many is far out, though the ratio hides it', () => {
    const values = Array.from({ length: 25 }, (_, at) => (at % 2 === 0 ? 99.7 : 100.3));
    const found = spreadOf([...alike(values), { value: 104.2, standard: 1 }]);
    expect(found.ratio).toBeLessThan(found.limit);
    expect(found).toMatchObject({ isExplained: false, furthest: 25 });
    expect(spreadOf(alike(values)).isExplained).toBe(true);
  });

  it.each([
    ['one result', alike([1])],
    ['no uncertainty', alike([1, 2], 0)],
    ['no number', alike([1, Number.NaN])],
  ])('refuses %s', (_, results) => expect(() => spreadOf(results)).toThrow(RangeError));
});
