import { describe, expect, it } from 'vitest';
import { rectangular, worksheetBudget } from '../../../src/core/worksheet/budget.ts';

describe('worksheetBudget', () => {
  const inputs = {
    small: rectangular(1, 0.3),
    large: { value: 2, standardUncertainty: 0.4 },
    none: { value: 3, standardUncertainty: 0 },
  };
  const budget = worksheetBudget(({ small, large, none }) => none + small - large, inputs);

  it('matches the hand-worked case: √(0.3²/3 + 0.4²), k = 1.960 (JCGM 100:2008, 4.3.7 and 5.1.2)', () => {
    expect(budget.value).toBeCloseTo(2, 12);
    expect(budget.standardUncertainty).toBeCloseTo(Math.sqrt(0.03 + 0.16), 12);
    expect(budget.coverageFactor).toBeCloseTo(1.959964, 6);
    expect(budget.expandedUncertainty).toBeCloseTo(1.959964 * Math.sqrt(0.19), 6);
  });

  it('lists the largest contribution first, none of them negative', () => {
    expect(budget.contributions.map(({ name }) => name)).toEqual(['large', 'small', 'none']);
    expect(budget.contributions[0]?.contribution).toBeCloseTo(0.4, 12);
  });

  it('refuses an input that cannot be', () =>
    expect(() => worksheetBudget(({ a }) => a, { a: rectangular(1, -1) })).toThrow(RangeError));
});
