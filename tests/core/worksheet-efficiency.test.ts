import { describe, expect, it } from 'vitest';
import { evaluateWorksheet } from '../../src/core/worksheet.ts';
import type { Worksheet } from '../../src/core/worksheet-form.ts';
import { numbersOf, refusalOf } from './fixtures/ready.ts';
import { millA, millC } from './fixtures/worksheet-mills.ts';

const efficiency = (worksheet: Worksheet) => evaluateWorksheet(worksheet).efficiency;

describe('worksheetEfficiency', () => {
  it('gives mill A 0.288 ± 0.053 (k = 2), worked by other code', () => {
    const own = numbersOf(efficiency(millA));
    expect(own.efficiency).toBeCloseTo(0.2878, 4);
    expect(own.standardUncertainty).toBeCloseTo(0.0265, 4);
    expect(own.high - own.low).toBeCloseTo(4 * own.standardUncertainty, 12);
  });

  it('is the filled-in formula of its operands', () => {
    const own = numbersOf(efficiency(millC));
    const { slope, lead, area, strandHalfAngle, advantage } = own.operands;
    const formula = (slope * lead * area * Math.cos(strandHalfAngle)) / (Math.PI * advantage);
    expect(own.efficiency).toBeCloseTo(formula, 12);
  });

  it('knows nothing of the friction typed', () => {
    const friction = { kind: 'friction', low: undefined, high: undefined } as const;
    const tensioner = { ...millA.tensioner, friction };
    expect(efficiency({ ...millA, tensioner })).toEqual(efficiency(millA));
  });

  it('refuses more than there is: something typed must be wrong', () => {
    const band = { ...millA.band, bodyWidth: 0.29, widthOverTeeth: undefined };
    expect(refusalOf(efficiency({ ...millA, band }))).toBe('ownEfficiencyAboveOne');
  });
});
