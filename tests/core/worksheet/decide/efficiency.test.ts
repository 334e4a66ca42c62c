import { describe, expect, it } from 'vitest';
import { worksheetEfficiency } from '../../../../src/core/worksheet/decide/efficiency.ts';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { ready } from '../../../../src/core/worksheet/outcome.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millA, millC } from '../fixtures/mills.ts';

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
    const own = numbersOf(efficiency(millA)).efficiency;
    expect(efficiency({ ...millA, band })).toEqual({
      ready: false,
      waitsFor: ['tensioner.thread', 'tensioner.advantage', 'band.bodyWidth', 'band.thickness'],
      refusal: {
        code: 'ownEfficiencyAboveOne',
        values: { efficiency: expect.closeTo(10 * own, 9) },
      },
    });
  });

  it('takes an efficiency of just one', () => {
    const { measured, section, strands } = evaluateWorksheet(millA);
    // π·adv/(l·A·cos β) of equal wheels and no lever: what a screw without losses would show.
    const slope = Math.PI / (numbersOf(efficiency(millA)).operands.lead * numbersOf(section).area);
    const lossless = ready({ ...numbersOf(measured), slope });
    const own = numbersOf(worksheetEfficiency(millA, lossless, section, strands));
    expect(own.efficiency).toBe(1);
  });

  it('waits for the lever by its box', () => {
    const tensioner = { ...millA.tensioner, advantage: undefined };
    expect(efficiency({ ...millA, tensioner })).toEqual({
      ready: false,
      waitsFor: ['tensioner.advantage'],
    });
  });
});
