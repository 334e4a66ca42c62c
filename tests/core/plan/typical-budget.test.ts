/** What makes a planned measurement uncertain as a rule. */
import { describe, expect, it } from 'vitest';
import { type MeasurementPlan, planOutcome, typicalBudget } from '../../../src/core/plan.ts';

const plan: MeasurementPlan = {
  gaugeLength: 0.4,
  graduation: 1e-5,
  readTo: 5e-6,
  firstShare: 0,
  steps: 10,
  series: 1,
  stressAtTop: 110e6,
  youngsModulus: 205e9,
};
const budgetOf = (change: Partial<MeasurementPlan>, seed = 1) =>
  typicalBudget({ ...plan, ...change }, 61, seed);
const together = ({ shares, coverageFactor }: ReturnType<typeof budgetOf>) =>
  coverageFactor * Math.hypot(...Object.values(shares));

describe('typicalBudget', () => {
  it.each([[{}], [{ series: 3 }], [{ gaugeLength: 0.7 }]])(
    'adds up to the middle half-width of the same measurements: %j',
    (change) => {
      const { median } = planOutcome({ ...plan, ...change }, 61, 1);
      expect(together(budgetOf(change))).toBeCloseTo(median as number, 2);
    },
  );

  it('has the lines that follow from the plan alone, to first order', () => {
    const { shares } = budgetOf({});
    const root3 = Math.sqrt(3);
    expect(shares['youngsModulus']).toBeCloseTo(5 / 205 / root3, 4);
    expect(shares['gaugeLength']).toBeCloseTo(1 / 400 / root3, 4);
    const stretch = (110e6 / 205e9) * 0.4;
    expect(shares['dial']).toBeCloseTo(1e-5 / stretch / root3, 2);
  });

  it('halves the dial’s line with half the graduation or twice the bar', () => {
    const { dial = 0 } = budgetOf({}).shares;
    expect((budgetOf({ graduation: 5e-6 }).shares['dial'] ?? 0) / dial).toBeCloseTo(0.5, 1);
    expect((budgetOf({ gaugeLength: 0.8 }).shares['dial'] ?? 0) / dial).toBeCloseTo(0.5, 1);
  });

  it('is the same from the same seed, and another from another', () => {
    expect(budgetOf({})).toEqual(budgetOf({}));
    expect(budgetOf({}, 2)).not.toEqual(budgetOf({}));
  });

  it('refuses repeats out of range, and a plan of which nothing comes', () => {
    expect(() => typicalBudget(plan, 0, 1)).toThrow(/^repeats must be/);
    expect(() => typicalBudget({ ...plan, gaugeLength: 1e-3 }, 5, 1)).toThrow(
      'the plan must give a stress (none did)',
    );
  });
});
