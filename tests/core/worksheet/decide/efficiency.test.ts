import { describe, expect, it } from 'vitest';
import { worksheetEfficiency } from '../../../../src/core/worksheet/decide/efficiency.ts';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { ready } from '../../../../src/core/worksheet/outcome.ts';
import { evaluateWorksheet, leadOf } from '../../../../src/core/worksheet.ts';
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

  // By hand: the wheels of 600 and 450 mm differ by 75 mm in radius over 1500 mm, a sine of 0.05 and a cosine of
  // √0.9975; a lever of 2; so a slope of 2π MPa for each N·m leaves 3 mm × 34.65 mm² × 1 MPa × √0.9975.
  it('matches the hand-worked case of mill C: 10.382 % for a slope of 2π MPa for each N·m', () => {
    const { measured, section, strands } = evaluateWorksheet(millC);
    const steep = ready({ ...numbersOf(measured), slope: 2e6 * Math.PI });
    const own = numbersOf(worksheetEfficiency(millC, steep, section, strands));
    expect(own.efficiency).toBeCloseTo(0.103_819_98, 8);
    expect(own.operands).toEqual({
      slope: 2e6 * Math.PI,
      drive: { kind: 'screw', lead: expect.closeTo(0.003, 12) },
      area: expect.closeTo(34.65e-6, 12),
      strandCount: 2,
      strandHalfAngle: expect.closeTo(0.050_020_857, 9),
      advantage: 2,
    });
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
    const slope =
      Math.PI /
      ((leadOf(numbersOf(efficiency(millA)).operands.drive) ?? 0) * numbersOf(section).area);
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
