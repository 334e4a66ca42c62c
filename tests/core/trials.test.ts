import { describe, expect, it } from 'vitest';
import { propagate } from '../../src/core/budget.ts';
import { propagateByTrials } from '../../src/core/trials.ts';

const options = { probability: 0.95, trials: 200_000, seed: 1 } as const;
const normal = { value: 0, standardUncertainty: 1 };
const sum = ({ a, b, c, d }: Record<'a' | 'b' | 'c' | 'd', number>) => a + b + c + d;
const only = ({ a }: { a: number }) => a;

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
  it('adapts the number of trials: two digits of u want a few hundred thousand', () => {
    const result = propagateByTrials(only, { a: normal }, { ...options, trials: 'adaptive' });
    expect(result.trials % 10_000).toBe(0);
    expect(result.trials).toBeGreaterThanOrEqual(20_000);
    expect(Math.abs(result.standardUncertainty - 1)).toBeLessThan(0.05);
    expect(Math.abs(result.high - 1.96)).toBeLessThan(0.05);
  });
  it('stops at two blocks where nothing varies', () => {
    const exact = { a: { value: 4, standardUncertainty: 0 } };
    const result = propagateByTrials(only, exact, { ...options, trials: 'adaptive' });
    expect(result).toEqual({ value: 4, standardUncertainty: 0, low: 4, high: 4, trials: 20_000 });
  });
  it('takes the ranks of JCGM 101 7.7 from few trials', () => {
    const two = propagateByTrials(only, { a: normal }, { ...options, trials: 2 });
    expect(two.low).toBeLessThan(two.high);
    expect((two.low + two.high) / 2).toBeCloseTo(two.value, 12);
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
