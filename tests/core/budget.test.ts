import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { propagate } from '../../src/core/budget.ts';

const at95 = { probability: 0.95 };
const half = (range: number) => range / Math.sqrt(3);

describe('propagate', () => {
  it('agrees with the calibration of an end gauge, GUM H.1 (lengths in nm)', () => {
    const budget = propagate(
      ({ standard, systematic, random, spread, warmth, growth, difference, reading }) =>
        standard +
        reading +
        systematic +
        random -
        standard * (spread * warmth + growth * difference),
      {
        standard: { value: 50000623, standardUncertainty: 25, degreesOfFreedom: 18 },
        reading: { value: 215, standardUncertainty: 5.8, degreesOfFreedom: 24 },
        random: { value: 0, standardUncertainty: 3.9, degreesOfFreedom: 5 },
        systematic: { value: 0, standardUncertainty: 6.7, degreesOfFreedom: 8 },
        spread: { value: 0, standardUncertainty: half(1e-6), degreesOfFreedom: 50 },
        warmth: { value: -0.1, standardUncertainty: 0.41 },
        growth: { value: 11.5e-6, halfWidth: 2e-6, shape: 'rectangular' },
        difference: { value: 0, standardUncertainty: half(0.05), degreesOfFreedom: 2 },
      },
      { probability: 0.99 },
    );
    expect(budget.value).toBeCloseTo(50000838, 6);
    expect(budget.standardUncertainty).toBeCloseTo(32, 0);
    expect(budget.degreesOfFreedom).toBeCloseTo(16.7, 0);
    const lines = new Map(budget.contributions.map((line) => [line.name, line.contribution]));
    expect(lines.get('standard')).toBeCloseTo(25, 6);
    expect(lines.get('spread')).toBeCloseTo(2.9, 1);
    expect(lines.get('difference')).toBeCloseTo(16.6, 1);
    expect(lines.get('growth')).toBe(0);
    expect(budget.expandedUncertainty).toBeGreaterThan(91);
    expect(budget.expandedUncertainty).toBeLessThan(94); // GUM: 93, with 16 degrees of freedom
  });
  it('agrees with the correction predicted at 30 °C, GUM H.3: inputs with r = −0.930', () => {
    const budget = propagate(
      ({ offset, slope }) => offset + 10 * slope,
      {
        offset: { value: -0.1712, standardUncertainty: 0.0029, degreesOfFreedom: 9 },
        slope: { value: 0.00218, standardUncertainty: 0.00067, degreesOfFreedom: 9 },
      },
      { probability: 0.95, correlations: [['offset', 'slope', -0.93]] },
    );
    expect(budget.value).toBeCloseTo(-0.1494, 4);
    expect(budget.standardUncertainty).toBeCloseTo(0.0041, 4);
    expect(budget.degreesOfFreedom).toBe(9);
  });
  it('agrees with NIST Technical Note 1900, thermal expansion', () => {
    const budget = propagate(
      ({ from, to, cold, warm }) => (to - from) / (from * (warm - cold)),
      {
        from: { value: 1.4999, standardUncertainty: 0.0001 },
        to: { value: 1.5021, standardUncertainty: 0.0002 },
        cold: { value: 288.15, standardUncertainty: 0.02 },
        warm: { value: 373.1, standardUncertainty: 0.05 },
      },
      at95,
    );
    expect(budget.value).toBeCloseTo(17.266e-6, 9);
    expect(budget.standardUncertainty).toBeCloseTo(1.7554772808e-6, 14);
  });
  it('has the closed form of products: relative uncertainties add as squares', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1e3, noNaN: true }),
        fc.double({ min: 0.001, max: 0.3, noNaN: true }),
        fc.double({ min: 0.001, max: 0.3, noNaN: true }),
        (value, first, second) => {
          const budget = propagate(
            ({ a, b }) => a / b,
            {
              a: { value, standardUncertainty: first * value },
              b: { value: 7, standardUncertainty: 7 * second },
            },
            at95,
          );
          const relative = budget.standardUncertainty / budget.value / Math.hypot(first, second);
          expect(Math.abs(relative - 1)).toBeLessThan(1e-8);
        },
      ),
    ));
  it('takes U = 1.96 u where all is normal, and gives signed sensitivities', () => {
    const inputs = {
      a: { value: 1, standardUncertainty: 3 },
      b: { value: 0, standardUncertainty: 4 },
    };
    const budget = propagate(({ a, b }) => a - b, inputs, at95);
    expect(budget.standardUncertainty).toBeCloseTo(5, 12);
    expect(budget.coverageFactor).toBeCloseTo(1.95996398454, 10);
    expect(budget.expandedUncertainty).toBeCloseTo(9.7998, 4);
    expect(budget.contributions[1]?.sensitivity).toBeCloseTo(-1, 12);
    expect(budget.contributions[1]?.contribution).toBeCloseTo(4, 12);
  });
  it('lets an input be exact: a line of 0, with its sensitivity', () => {
    const exact = {
      a: { value: 5, standardUncertainty: 0 },
      b: { value: 0, standardUncertainty: 0 },
    };
    const budget = propagate(({ a, b }) => a * a + b, exact, at95);
    expect(budget.expandedUncertainty).toBe(0);
    expect(budget.contributions[0]?.sensitivity).toBeCloseTo(10, 9);
    expect(budget.contributions[0]?.contribution).toBe(0);
  });
  it.each([5e-9, 5e9])(
    'finds the sensitivity to an exact input of any size: 1/x at %s',
    (value) => {
      const budget = propagate(({ a }) => 1 / a, { a: { value, standardUncertainty: 0 } }, at95);
      const sensitivity = budget.contributions[0]?.sensitivity ?? 0;
      expect(sensitivity * value ** 2).toBeCloseTo(-1, 9);
    },
  );
  it('keeps the slope of an input known better than its digits tell', () => {
    const budget = propagate(
      ({ modulus, strain }) => modulus * strain,
      {
        modulus: { value: 205e9, standardUncertainty: 3e-6 },
        strain: { value: 5e-4, standardUncertainty: 1e-6 },
      },
      at95,
    );
    const [modulus] = budget.contributions;
    expect(modulus?.sensitivity).toBeCloseTo(5e-4, 12);
    expect(modulus?.contribution).toBeCloseTo(1.5e-9, 15);
    expect(budget.standardUncertainty).toBeCloseTo(205e3, 6);
  });

  it('refuses a probability out of range and models without a finite value', () => {
    const inputs = { a: { value: 1, standardUncertainty: 1 } };
    expect(() => propagate(({ a }) => a, inputs, { probability: 0 })).toThrow(/probability/);
    expect(() => propagate(({ a }) => a, inputs, { probability: 1 })).toThrow(/probability/);
    expect(() => propagate(() => Number.NaN, inputs, at95)).toThrow(/value of the model/);
    const step = ({ a }: { a: number }) => (a === 1 ? 0 : Number.NaN);
    expect(() => propagate(step, inputs, at95)).toThrow(/sensitivity to a/);
  });
});
