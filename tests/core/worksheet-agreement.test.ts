import { describe, expect, it } from 'vitest';
import { evaluateWorksheet } from '../../src/core/worksheet.ts';
import type { Worksheet } from '../../src/core/worksheet-form.ts';
import { numbersOf } from './fixtures/ready.ts';
import { millA } from './fixtures/worksheet-mills.ts';

const agreement = (worksheet: Worksheet) => numbersOf(evaluateWorksheet(worksheet).agreement);
const withFriction = (low: number, high: number): Worksheet => ({
  ...millA,
  tensioner: { ...millA.tensioner, friction: { kind: 'friction', low, high } },
});

describe('worksheetAgreement', () => {
  it('matches the formula worked by hand from its operands (ISO/IEC 17043)', () => {
    const { agreementNumber, operands } = agreement(millA);
    const { measured, predicted, expandedMeasured, expandedPredicted } = operands;
    const both = Math.hypot(expandedMeasured, expandedPredicted);
    expect(agreementNumber).toBeCloseTo((measured - predicted) / both, 12);
    expect(agreementNumber).toBeCloseTo(-0.3, 3);
  });

  it.each([
    [0.1, 0.18, 'agree'],
    [0.05, 0.06, 'measuredLower'],
    [0.4, 0.42, 'measuredHigher'],
  ] as const)('with friction from %s to %s: %s', (low, high, verdict) =>
    expect(agreement(withFriction(low, high)).verdict).toBe(verdict),
  );
});
