import { describe, expect, it } from 'vitest';
import { randomSource } from '../../../src/core/random.ts';
import { inputSampler } from '../../../src/core/statistics/input-sampler.ts';
import {
  standardUncertainty,
  type UncertainInput,
} from '../../../src/core/statistics/uncertain-input.ts';
import { mean, standardDeviation } from '../../../src/core/summary.ts';

const COUNT = 100_000;
const draws = (input: UncertainInput) =>
  Array.from({ length: COUNT }, inputSampler(input, randomSource(1))).sort((a, b) => a - b);
const quantile = (sorted: readonly number[], p: number) => sorted[Math.floor(p * COUNT)] as number;
const bounds = { value: 3, halfWidth: 2 };
const deviation = { value: 3, standardDeviation: 1, degreesOfFreedom: 5 };

describe('inputSampler', () => {
  it.each([
    ['rectangular', 0.95],
    ['triangular', 1 - Math.sqrt(0.05)],
    ['arcsine', Math.sin(0.475 * Math.PI)],
    ['ends', 1],
  ] as const)('draws %s bounds: 95 in 100 within %s half-widths (closed form)', (shape, share) => {
    const values = draws({ ...bounds, shape });
    expect(Math.abs(quantile(values, 0.975) - 3 - 2 * share)).toBeLessThan(0.03);
    expect(Math.abs(quantile(values, 0.025) - 3 + 2 * share)).toBeLessThan(0.03);
    expect(Math.max(...values.map((value) => Math.abs(value - 3)))).toBeLessThanOrEqual(2);
  });
  it.each<UncertainInput>([
    { ...bounds, shape: 'rectangular' },
    { ...bounds, shape: 'triangular' },
    { ...bounds, shape: 'arcsine' },
    { ...bounds, shape: 'ends' },
    { value: 3, standardUncertainty: 2 },
    deviation,
  ])('draws %o with its value as mean and its uncertainty as deviation', (input) => {
    const values = draws(input);
    const u = standardUncertainty(input);
    expect(Math.abs(mean(values) - 3)).toBeLessThan(0.02 * u);
    expect(standardDeviation(values) / u).toBeCloseTo(1, 1);
  });
  it('draws Student with u as its scale (JCGM 101 6.4.9), or with the given deviation', () => {
    const scaled = draws({ value: 3, standardUncertainty: 1, degreesOfFreedom: 5 });
    expect(Math.abs(quantile(scaled, 0.975) - 3 - 2.57)).toBeLessThan(0.06); // GUM table G.2
    const ratio = (quantile(draws(deviation), 0.975) - 3) / (quantile(scaled, 0.975) - 3);
    expect(ratio).toBeCloseTo(Math.sqrt(3 / 5), 9);
  });
  it('refuses what is not an input', () =>
    expect(() =>
      inputSampler({ ...bounds, halfWidth: -1, shape: 'arcsine' }, randomSource(1)),
    ).toThrow('halfWidth must be at least 0 (was -1)'));
});
