import { describe, expect, it } from 'vitest';
import { worksheetAgreement } from '../../../../src/core/worksheet/decide/agreement.ts';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { ready } from '../../../../src/core/worksheet/outcome.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millA } from '../fixtures/mills.ts';

const agreement = (worksheet: Worksheet) => numbersOf(evaluateWorksheet(worksheet).agreement);
const withFriction = (low: number, high: number): Worksheet => ({
  ...millA,
  tensioner: { ...millA.tensioner, friction: { kind: 'friction', low, high } },
});

describe('worksheetAgreement', () => {
  // By other code: 106.80 ± 20.22 MPa measured, 116.76 ± 26.35 MPa predicted; −9.963 over √(20.22² + 26.35²).
  it('gives mill A −0.29998 by ISO/IEC 17043, and names the four numbers that it compares', () => {
    const { agreementNumber, operands } = agreement(millA);
    expect(agreementNumber).toBeCloseTo(-0.299_983, 5);
    const inMegapascals = Object.entries(operands).map(([name, value]) => [name, value / 1e6]);
    expect(Object.fromEntries(inMegapascals)).toEqual({
      measured: expect.closeTo(106.8001, 4),
      predicted: expect.closeTo(116.7635, 4),
      expandedMeasured: expect.closeTo(20.2214, 4),
      expandedPredicted: expect.closeTo(26.3479, 3),
    });
  });

  // Three and four make five: 30 and 40 MPa are 50 MPa together.
  it.each([
    [150e6, 1, 'agree'],
    [50e6, -1, 'agree'],
    [151e6, 1.02, 'measuredHigher'],
    [49e6, -1.02, 'measuredLower'],
  ])('of %s Pa against 100 MPa is %s, by hand: %s', (stress, score, verdict) => {
    const measured = { ...numbersOf(evaluateWorksheet(millA).measured), stress };
    const predicted = { ...numbersOf(evaluateWorksheet(millA).predicted), stress: 100e6 };
    const result = worksheetAgreement(
      ready({ ...measured, expandedUncertainty: 30e6 }),
      ready({ ...predicted, expandedUncertainty: 40e6 }),
    );
    expect(numbersOf(result).agreementNumber).toBeCloseTo(score, 12);
    expect(numbersOf(result).verdict).toBe(verdict);
  });

  it.each([
    [0.1, 0.18, 'agree'],
    [0.05, 0.06, 'measuredLower'],
    [0.4, 0.42, 'measuredHigher'],
  ] as const)('with friction from %s to %s: %s', (low, high, verdict) =>
    expect(agreement(withFriction(low, high)).verdict).toBe(verdict),
  );
});
