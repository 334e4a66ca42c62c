import { describe, expect, it } from 'vitest';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { worksheetChain } from '../../../../src/core/worksheet/predict/chain.ts';
import { twoPressures } from '../../../../src/core/worksheet/second/two-pressures.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf, refusalOf } from '../../fixtures/ready.ts';
import { millD } from '../fixtures/hydraulic-mill.ts';

const pumped = (pumping: number | undefined, lettingDown: number | undefined): Worksheet => ({
  ...millD,
  second: { ...millD.second, pumping, lettingDown },
});
const opinionOf = (sheet: Worksheet) => twoPressures(sheet, worksheetChain(sheet));

describe('the stress by pumping and letting down', () => {
  // By hand: the middle of 103 and 97 bar is 10 MPa; half of the no-load 2.7852 bar goes to a spring: 9.86074 MPa on
  // 1256.637 mm² over 2 × 52.5 mm² are 118.0 MPa.
  it('matches a hand-worked case: 118.01 MPa', () =>
    expect(numbersOf(opinionOf(pumped(10.3e6, 9.7e6))).value / 1e6).toBeCloseTo(118.01, 1));

  it('does not hang on the seal: as much more one way as the other changes nothing', () => {
    const value = (apart: number) => numbersOf(opinionOf(pumped(1e7 + apart, 1e7 - apart))).value;
    expect(value(8e5)).toBeCloseTo(value(1e5), 3);
  });

  it('stands among the second opinions of the sheet, beside the dial at that pressure', () => {
    const { loosening } = evaluateWorksheet(pumped(10.3e6, 9.7e6)).opinions;
    expect(numbersOf(loosening).torque).toBe(10.3e6);
    expect(Math.abs(numbersOf(loosening).agreementNumber ?? 9)).toBeLessThan(1);
  });

  it('refuses them the wrong way round, and waits for both', () => {
    expect(refusalOf(opinionOf(pumped(9e6, 9e6)))).toBe('pressureNotLess');
    expect(opinionOf(pumped(undefined, undefined))).toMatchObject({
      waitsFor: ['second.pumping', 'second.lettingDown'],
    });
  });
});
