import { describe, expect, it } from 'vitest';
import { propagate } from '../../src/core/budget.ts';
import { randomSource } from '../../src/core/random.ts';
import { mean, standardDeviation } from '../../src/core/summary.ts';
import { propagateByTrials } from '../../src/core/trials.ts';

const options = { probability: 0.95, trials: 200_000, seed: 1 } as const;
const normal = { value: 0, standardUncertainty: 1 };
const sum = ({ a, b, c, d }: Record<'a' | 'b' | 'c' | 'd', number>) => a + b + c + d;
const only = ({ a }: { a: number }) => a;
const fromNoughtToOne = { value: 0.5, halfWidth: 0.5, shape: 'rectangular' } as const;

/** A model of one input that keeps what it saw. */
function watched() {
  const seen: number[] = [];
  const model = ({ a }: { a: number }): number => {
    seen.push(a);
    return a;
  };
  return { seen, model };
}

/** Mean, deviation and the ends of ranks 250 and 9750 (JCGM 101 7.7: q = 9500) of each 10 000. */
function blocksOf(seen: readonly number[]): number[][] {
  return Array.from({ length: seen.length / 10_000 }, (_, i) => {
    const block = Float64Array.from(seen.slice(10_000 * i, 10_000 * (i + 1))).sort();
    return [mean(block), standardDeviation(block), block[249] as number, block[9749] as number];
  });
}

/** JCGM 101 7.9: whether twice the deviation of each mean over the blocks is within δ. */
function isStable(blocks: readonly number[][], tolerance: number): boolean {
  return [0, 1, 2, 3].every((place) => {
    const column = blocks.map((block) => block[place] as number);
    return 2 * standardDeviation(column) <= tolerance * Math.sqrt(blocks.length);
  });
}

describe('propagateByTrials', () => {
  it('agrees with four normal inputs, JCGM 101 9.2.2: u = 2, interval ± 3.92', () => {
    const four = { a: normal, b: normal, c: normal, d: normal };
    const result = propagateByTrials(sum, four, options);
    expect(Math.abs(result.value)).toBeLessThan(0.02);
    expect(Math.abs(result.standardUncertainty - 2)).toBeLessThan(0.01);
    expect(Math.abs(result.low + 3.92)).toBeLessThan(0.05);
    expect(Math.abs(result.high - 3.92)).toBeLessThan(0.05);
    expect(result.trials).toBe(200_000);
  });
  it('agrees with a dominant rectangular input, JCGM 101 9.2.4: interval ± 17.0', () => {
    const box = (deviation: number) =>
      ({ value: 0, halfWidth: deviation * Math.sqrt(3), shape: 'rectangular' }) as const;
    const four = { a: box(1), b: box(1), c: box(1), d: box(10) };
    const result = propagateByTrials(sum, four, options);
    expect(Math.abs(result.high - 17.02)).toBeLessThan(0.1);
    expect(Math.abs(result.low + 17.02)).toBeLessThan(0.1);
    expect(propagate(sum, four, { probability: 0.95 }).expandedUncertainty).toBeCloseTo(19.89, 2);
  });
  it('agrees with the calibration of a mass, JCGM 101 9.3, where first order fails', () => {
    const box = (low: number, high: number) =>
      ({ value: (low + high) / 2, halfWidth: (high - low) / 2, shape: 'rectangular' }) as const;
    const result = propagateByTrials(
      ({ mass, excess, air, weight, reference }) =>
        (mass + excess) * (1 + (air - 1.2) * (1 / weight - 1 / reference)) - 100000,
      {
        mass: { value: 100000, standardUncertainty: 0.05 },
        excess: { value: 1.234, standardUncertainty: 0.02 },
        air: box(1.1, 1.3),
        weight: box(7000, 9000),
        reference: box(7950, 8050),
      },
      options,
    );
    expect(Math.abs(result.value - 1.2341)).toBeLessThan(0.001);
    expect(Math.abs(result.standardUncertainty - 0.0754)).toBeLessThan(0.001);
    expect(Math.abs(result.low - 1.0834)).toBeLessThan(0.004);
    expect(Math.abs(result.high - 1.3825)).toBeLessThan(0.004);
  });
  it('says the same again from the same seed, and agrees with first order on a line', () => {
    const inputs = {
      a: { value: 5, standardUncertainty: 2 },
      b: { value: 1, standardUncertainty: 1 },
    };
    const line = ({ a, b }: { a: number; b: number }) => 3 * a - b;
    const result = propagateByTrials(line, inputs, options);
    const budget = propagate(line, inputs, { probability: 0.95 });
    expect(propagateByTrials(line, inputs, options)).toEqual(result);
    expect(result.standardUncertainty / budget.standardUncertainty).toBeCloseTo(1, 2);
  });
  it('adapts the number of trials: a few blocks for two digits of u = 1.0', () => {
    const result = propagateByTrials(only, { a: normal }, { ...options, trials: 'adaptive' });
    expect(result.trials % 10_000).toBe(0);
    expect(result.trials).toBeGreaterThanOrEqual(20_000);
    expect(result.trials).toBeLessThan(100_000);
    expect(Math.abs(result.standardUncertainty - 1)).toBeLessThan(0.05);
    expect(Math.abs(result.high - 1.96)).toBeLessThan(0.05);
  });
  it('stops at two blocks where nothing varies', () => {
    const exact = { a: { value: 4, standardUncertainty: 0 } };
    const result = propagateByTrials(only, exact, { ...options, trials: 'adaptive' });
    expect(result).toEqual({ value: 4, standardUncertainty: 0, low: 4, high: 4, trials: 20_000 });
  });
  it.each([
    [2, 0.05],
    [3, 0.05],
    [0.02, 0.0005],
    [30, 0.5],
  ])('with u = %s stops at the first block where all four stand to δ = %s', (u, tolerance) => {
    const { seen, model } = watched();
    const inputs = { a: { value: 0, standardUncertainty: u } };
    const { trials } = propagateByTrials(model, inputs, { ...options, trials: 'adaptive' });
    const blocks = blocksOf(seen);
    const stable = blocks.filter((_, i) => i > 0 && isStable(blocks.slice(0, i + 1), tolerance));
    expect(trials).toBe(seen.length);
    expect(stable).toEqual(blocks.slice(-1));
  });
  it('gives mean and deviation of all that an adaptive run drew, and the mean ends of its blocks', () => {
    const { seen, model } = watched();
    const inputs = { a: { value: 0, standardUncertainty: 2 } };
    const result = propagateByTrials(model, inputs, { ...options, trials: 'adaptive' });
    const blocks = blocksOf(seen);
    expect(result.value).toBeCloseTo(mean(seen), 12);
    expect(result.standardUncertainty).toBeCloseTo(standardDeviation(seen), 10);
    expect(result.low).toBeCloseTo(mean(blocks.map((block) => block[2] as number)), 12);
    expect(result.high).toBeCloseTo(mean(blocks.map((block) => block[3] as number)), 12);
  });
  it('gives up after 5 000 000 trials where a single one is all of the deviation', () => {
    let calls = 0;
    const once = () => (++calls === 1 ? 1 : 0);
    const result = propagateByTrials(once, {}, { ...options, trials: 'adaptive' });
    expect([result.trials, calls]).toEqual([5_000_000, 5_000_000]);
    // Σ(x − x̄)² = 1 − 1/n, so u = 1/√n, by hand.
    expect(result.standardUncertainty * Math.sqrt(5_000_000)).toBeCloseTo(1, 9);
  });
  it.each([
    [2, 0.5, 1, 2], // q = 1
    [3, 0.95, 1, 3], // q = 3, but only 2 steps fit
    [4, 0.5, 1, 3], // q = 2
    [10, 0.75, 1, 9], // q = 7.5 + ½
    [40, 0.9, 2, 38], // q = 36
    [100, 0.95, 3, 98], // q = 95, r = 2½ + ½
  ])('of %s trials holds %s between the ranks %s and %s, JCGM 101 7.7', (...row) => {
    const [trials, probability, first, last] = row;
    const { seen, model } = watched();
    const result = propagateByTrials(model, { a: normal }, { probability, trials, seed: 1 });
    const sorted = Float64Array.from(seen).sort();
    expect([result.low, result.high]).toEqual([sorted[first - 1], sorted[last - 1]]);
    expect(result.value).toBeCloseTo(mean(seen), 12);
    expect(result.standardUncertainty).toBeCloseTo(standardDeviation(seen), 12);
  });
  it('knows the deviation of two trials: their difference over √2, by hand', () => {
    const two = propagateByTrials(only, { a: normal }, { ...options, trials: 2 });
    expect((two.low + two.high) / 2).toBeCloseTo(two.value, 12);
    expect(two.standardUncertainty).toBeCloseTo((two.high - two.low) / Math.sqrt(2), 12);
  });
  it.each([2, 10_000, 25_001])('asks the model once for each of %s trials', (trials) => {
    const { seen, model } = watched();
    propagateByTrials(model, { a: normal }, { ...options, trials });
    expect(seen).toHaveLength(trials);
    expect(new Set(seen).size).toBe(trials);
  });
  it('draws the inputs one after the other from one source, none in vain', () => {
    const seen: number[][] = [];
    const model = ({ a, b }: { a: number; b: number }) => seen.push([a, b]);
    const inputs = { a: fromNoughtToOne, b: fromNoughtToOne };
    propagateByTrials(model, inputs, { ...options, trials: 3 });
    const drawn = Array.from({ length: 6 }, randomSource(options.seed).uniform);
    expect(seen).toHaveLength(3);
    for (const [trial, [a, b]] of seen.entries()) {
      expect(a).toBeCloseTo(drawn[trial] as number, 12);
      expect(b).toBeCloseTo(drawn[trial + 3] as number, 12);
    }
  });
  it('gives the model its inputs as an object that can be listed and copied', () => {
    const listed: unknown[] = [];
    const model = (values: Record<'a' | 'b', number>) => listed.push({ ...values });
    const exact = (value: number) => ({ value, standardUncertainty: 0 });
    propagateByTrials(model, { a: exact(2), b: exact(3) }, { ...options, trials: 2 });
    expect(listed).toEqual([
      { a: 2, b: 3 },
      { a: 2, b: 3 },
    ]);
  });
  it('refuses options out of range and models without a finite value', () => {
    const inputs = { a: normal };
    const asked = (change: object) => () =>
      propagateByTrials(only, inputs, { ...options, ...change });
    expect(asked({ probability: 0 })).toThrow(/probability must be above 0/);
    expect(asked({ probability: 1 })).toThrow(/probability must be below 1/);
    expect(asked({ trials: 1 })).toThrow('trials must be a whole number between 2 and 5000000');
    expect(asked({ seed: -1 })).toThrow(/seed must be a whole number/);
    expect(() => propagateByTrials(() => Number.NaN, inputs, options)).toThrow(
      /value of the model/,
    );
  });
});
