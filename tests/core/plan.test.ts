/** What a plan reaches. */
import { describe, expect, it } from 'vitest';
import { type MeasurementPlan, planOutcome } from '../../src/core/plan.ts';

const plan: MeasurementPlan = {
  gaugeLength: 0.4,
  graduation: 1e-5,
  readTo: 5e-6,
  firstShare: 0.1,
  steps: 9,
  series: 1,
  stressAtTop: 110e6,
  youngsModulus: 205e9,
};
const reached = (change: Partial<MeasurementPlan>) => {
  const { median, nineOfTen, givesStress } = planOutcome({ ...plan, ...change }, 60, 1);
  return { median: median as number, nineOfTen: nineOfTen as number, givesStress };
};

describe('planOutcome', () => {
  it('is the same from the same seed, and another from another', () => {
    expect(planOutcome(plan, 20, 7)).toEqual(planOutcome(plan, 20, 7));
    expect(planOutcome(plan, 20, 8)).not.toEqual(planOutcome(plan, 20, 7));
  });

  it('says 10 to 30 % of one series with a short bar', () => {
    const { median, nineOfTen, givesStress } = reached({});
    expect(median).toBeGreaterThan(0.1);
    expect(nineOfTen).toBeGreaterThan(median);
    expect(nineOfTen).toBeLessThan(0.35);
    expect(givesStress).toBeGreaterThan(0.95);
  });

  it('says 5 to 8 % of three series with a bar of 0.7 m, and never less than the steel is known to', () => {
    const { median } = reached({ series: 3, gaugeLength: 0.7 });
    expect(median).toBeGreaterThan(0.05);
    expect(median).toBeLessThan(0.08);
  });

  it('has no number where the stretch is too small to see', () => {
    const { median, nineOfTen, givesStress } = planOutcome({ ...plan, gaugeLength: 0.02 }, 30, 1);
    expect(median).toBeUndefined();
    expect(nineOfTen).toBeUndefined();
    expect(givesStress).toBeLessThan(0.5);
  });

  it.each([
    [{ steps: 5 }, 'steps'],
    [{ series: 0 }, 'series'],
    [{ gaugeLength: 0 }, 'gaugeLength'],
    [{ graduation: Number.NaN }, 'graduation'],
    [{ readTo: -1 }, 'readTo'],
    [{ firstShare: 1 }, 'firstShare'],
    [{ loads: [0.5, 1] }, 'loads\\.length'],
    [{ loads: [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 1.1] }, 'loads'],
    [{ stressAtTop: 0 }, 'stressAtTop'],
    [{ youngsModulus: 0 }, 'youngsModulus'],
  ])('refuses what cannot be a plan: %j', (change, name) => {
    expect(() => planOutcome({ ...plan, ...change }, 10, 1)).toThrow(
      new RegExp(`^${name} must be`),
    );
  });

  it('refuses no measurement at all', () =>
    expect(() => planOutcome(plan, 0, 1)).toThrow(/^repeats must be/));
});
