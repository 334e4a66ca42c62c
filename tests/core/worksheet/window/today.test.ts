import { describe, expect, it } from 'vitest';
import { worksheetChain } from '../../../../src/core/worksheet/predict/chain.ts';
import { worksheetToday } from '../../../../src/core/worksheet/window/today.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { demandingMill as mill } from '../fixtures/demanding-mill.ts';

const { atUse, predicted } = evaluateWorksheet(mill);
const { theory } = worksheetChain(mill);

describe('worksheetToday', () => {
  it('is what was measured at the torque in use', () => {
    const { stress, low, high } = numbersOf(atUse);
    const today = worksheetToday(mill, atUse, theory);
    expect(today).toEqual({ ready: true, route: 'measured', stress, low, high });
  });

  it('is what the screw predicts there while nothing is measured', () => {
    const unmeasured = { ...mill, readings: [] };
    const { atUse } = evaluateWorksheet(unmeasured);
    const today = numbersOf(worksheetToday(unmeasured, atUse, theory));
    expect(today.route).toBe('predicted');
    expect(today.low).toBeLessThan(today.stress);
    expect(predicted.ready).toBe(true);
  });

  it('waits for the torque in use', () => {
    const unused = { ...mill, use: { torque: undefined } };
    const { atUse } = evaluateWorksheet(unused);
    expect(worksheetToday(unused, atUse, theory)).toMatchObject({ waitsFor: ['use.torque'] });
  });
});
