import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { randomSource } from '../../src/core/random.ts';
import { tCdf } from '../../src/core/student.ts';
import { mean, standardDeviation } from '../../src/core/summary.ts';

const COUNT = 100_000;
const draws = (draw: () => number) => Array.from({ length: COUNT }, draw);
const shareBelow = (values: number[], limit: number) =>
  values.filter((value) => value < limit).length / values.length;

const WHOLE = 2n ** 32n;

/** The generator as it is defined, in exact whole numbers: shifts are products and quotients. */
function exactNumbers(seed: number, count: number): number[] {
  const mixing = 15;
  let [a, b, c, counter] = [BigInt(seed) % WHOLE, BigInt(seed) / WHOLE, 0n, 1n];
  const numbers = Array.from({ length: mixing + count }, () => {
    const drawn = (a + b + counter) % WHOLE;
    const turned = ((c * 2n ** 21n) % WHOLE) | (c / 2n ** 11n);
    [a, b, c] = [b ^ (b / 2n ** 9n), (9n * c) % WHOLE, (turned + drawn) % WHOLE];
    counter += 1n;
    return Number(drawn);
  });
  return numbers.slice(mixing);
}

const seeds = fc.integer({ min: 0, max: Number.MAX_SAFE_INTEGER });

describe('randomSource', () => {
  it.each([0, 1, 2 ** 32 - 1, 2 ** 32, Number.MAX_SAFE_INTEGER])(
    'is sfc32 with 15 rounds of mixing from the seed %s, worked in exact whole numbers',
    (seed) => {
      const { uniform } = randomSource(seed);
      for (const drawn of exactNumbers(seed, 300)) expect(uniform() * 2 ** 32).toBe(drawn + 0.5);
    },
  );
  it('is sfc32 from any seed', () =>
    fc.assert(
      fc.property(seeds, (seed) => {
        const { uniform } = randomSource(seed);
        const first = Array.from({ length: 5 }, () => uniform() * 2 ** 32 - 0.5);
        expect(first).toEqual(exactNumbers(seed, 5));
      }),
    ));
  it('draws the middle of one of 2³² equal boxes, so never an end', () =>
    fc.assert(
      fc.property(seeds, (seed) => {
        const place = randomSource(seed).uniform() * 2 ** 32;
        expect(place - Math.floor(place)).toBe(0.5);
        expect(place).toBeGreaterThan(0);
        expect(place).toBeLessThan(2 ** 32);
      }),
    ));
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
