import { describe, expect, it } from 'vitest';
import type { WorksheetTensioner } from '../../../../src/core/worksheet/inputs.ts';
import { worksheetScrew } from '../../../../src/core/worksheet/predict/screw.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { worksheetMillResults } from '../fixtures/mill-results.ts';
import { millA } from '../fixtures/mills.ts';

const screwOf = (changes: Partial<WorksheetTensioner>) =>
  worksheetScrew({ ...millA.tensioner, ...changes });

describe('worksheetScrew', () => {
  it('gives mill A its efficiency at the middle of its friction, as worked by other code', () => {
    const screw = numbersOf(screwOf({}));
    expect(screw.efficiency / worksheetMillResults.A.efficiency).toBeCloseTo(1, 8);
    expect(screw.operands?.selfLockingFriction).toBeCloseTo(
      worksheetMillResults.A.selfLockingFriction,
      10,
    );
    expect(screw.efficiencyLow).toBeLessThan(screw.efficiency);
    expect(screw.efficiencyHigh).toBeGreaterThan(screw.efficiency);
  });

  it('takes an efficiency as it is typed, with nothing but the lead besides', () => {
    const typed = { kind: 'efficiency', low: 0.2, high: 0.4 } as const;
    const screw = numbersOf(screwOf({ friction: typed, collar: { kind: 'unknown' } }));
    expect(screw).toMatchObject({ drive: { lead: 4e-3 }, efficiencyLow: 0.2, efficiencyHigh: 0.4 });
    expect(screw.efficiency).toBeCloseTo(0.3, 12);
    expect(screw.operands).toBeUndefined();
    expect(screw.efficiencyOf({ efficiency: 0.25 })).toBe(0.25);
  });

  it('doubts a typed efficiency by half of its range: 25 to 50 % is 37.5 ± 12.5 %', () => {
    const typed = { kind: 'efficiency', low: 0.25, high: 0.5 } as const;
    expect(numbersOf(screwOf({ friction: typed })).inputs).toEqual({
      efficiency: { value: 0.375, halfWidth: 0.125, shape: 'rectangular' },
    });
  });
});
