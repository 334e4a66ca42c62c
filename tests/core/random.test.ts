import { describe, expect, it } from 'vitest';
import { randomSource } from '../../src/core/random.ts';
import { tCdf } from '../../src/core/student.ts';
import { mean, standardDeviation } from '../../src/core/summary.ts';

const COUNT = 100_000;
const draws = (draw: () => number) => Array.from({ length: COUNT }, draw);
const shareBelow = (values: number[], limit: number) =>
  values.filter((value) => value < limit).length / values.length;

describe('randomSource', () => {
  it('gives the same numbers again from the same seed, others from another', () => {
    const first = draws(randomSource(5).uniform).slice(0, 20);
    expect(draws(randomSource(5).uniform).slice(0, 20)).toEqual(first);
    expect(draws(randomSource(6).uniform).slice(0, 20)).not.toEqual(first);
    expect(draws(randomSource(5 + 2 ** 32).uniform).slice(0, 20)).not.toEqual(first);
  });
  it('draws uniform numbers: mean ½, sd 1/√12, equal shares in 20 boxes, none at the ends', () => {
    const values = draws(randomSource(1).uniform);
    expect(Math.abs(mean(values) - 0.5)).toBeLessThan(0.004);
    expect(standardDeviation(values)).toBeCloseTo(1 / Math.sqrt(12), 2);
    const boxes = new Array<number>(20).fill(0);
    for (const value of values)
      boxes[Math.floor(20 * value)] = (boxes[Math.floor(20 * value)] ?? 0) + 1;
    const expected = COUNT / 20;
    const chiSquared = boxes.reduce((sum, seen) => sum + (seen - expected) ** 2 / expected, 0);
    expect(chiSquared).toBeLessThan(36.2); // 99 % point of chi-squared with 19 degrees of freedom
    expect(Math.min(...values)).toBeGreaterThan(0);
    expect(Math.max(...values)).toBeLessThan(1);
  });
  it('draws numbers that do not follow each other', () => {
    const values = draws(randomSource(2).uniform).map((value) => value - 0.5);
    const next = values.slice(1).map((value, i) => value * (values[i] as number));
    expect(Math.abs(mean(next) * 12)).toBeLessThan(0.01);
  });
  it('draws normal numbers: mean 0, sd 1, 2.5 % above 1.96', () => {
    const values = draws(randomSource(3).normal);
    expect(Math.abs(mean(values))).toBeLessThan(0.01);
    expect(standardDeviation(values)).toBeCloseTo(1, 2);
    expect(shareBelow(values, 1.96)).toBeCloseTo(0.975, 2);
    expect(shareBelow(values, -1)).toBeCloseTo(0.1587, 2);
  });
  it.each([1, 4, 30])('draws Student numbers with %s degrees of freedom', (nu) => {
    const source = randomSource(4);
    const values = draws(() => source.student(nu));
    for (const t of [-3, -1, 0.5, 2]) expect(shareBelow(values, t)).toBeCloseTo(tCdf(t, nu), 2);
  });
  it.each([-1, 0.5, Number.NaN, 2 ** 54])('refuses the seed %s', (seed) =>
    expect(() => randomSource(seed)).toThrow(/seed must be a whole number between 0 and/),
  );
});
