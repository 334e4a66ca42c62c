import { describe, expect, it } from 'vitest';
import { worksheetToday } from '../../../../src/core/worksheet/window/today.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { demandingMill as mill } from '../fixtures/demanding-mill.ts';

describe('worksheetToday', () => {
  it('is what was measured at the torque in use', () => {
    const results = evaluateWorksheet(mill);
    const { stress, low, high } = numbersOf(results.atUse);
    expect(worksheetToday(results)).toEqual({ ready: true, route: 'measured', stress, low, high });
  });

  it('is what the screw predicts there while nothing is measured', () => {
    const results = evaluateWorksheet({ ...mill, readings: [] });
    const { stress, low, high } = numbersOf(results.predictedAtUse);
    expect(worksheetToday(results)).toEqual({ ready: true, route: 'predicted', stress, low, high });
    expect(low).toBeLessThan(stress);
  });

  it('waits for the torque in use', () => {
    const results = evaluateWorksheet({ ...mill, use: { torque: undefined } });
    expect(worksheetToday(results)).toMatchObject({ waitsFor: ['use.torque'] });
  });
});
