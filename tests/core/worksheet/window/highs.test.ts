import { describe, expect, it } from 'vitest';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { ready } from '../../../../src/core/worksheet/outcome.ts';
import { worksheetChain } from '../../../../src/core/worksheet/predict/chain.ts';
import { lifeEdge, yieldEdge } from '../../../../src/core/worksheet/window/highs.ts';
import { numbersOf, refusalOf } from '../../fixtures/ready.ts';
import { demandingMill as mill } from '../fixtures/demanding-mill.ts';
import { derivedOf } from '../fixtures/derived-of.ts';

const today = ready({ route: 'measured', stress: 100e6, low: 95e6, high: 105e6 } as const);
const life = (worksheet: Worksheet) => lifeEdge(worksheet, worksheetChain(worksheet), today);
const atYield = (worksheet: Worksheet) => yieldEdge(worksheet, worksheetChain(worksheet));

const bend = 1.05 * derivedOf('A', 'sigma_b smaller wheel (MPa)') * 1e6;

describe('yieldEdge', () => {
  // 0.6 × 1100 MPa less the bend over the wheel, m·v²/A and P/(2vA).
  it('leaves room for bend, speed and cut, by hand', () => {
    const running = (0.2512 * 576 + 187.5) / 29e-6;
    expect(numbersOf(atYield(mill)).stress).toBeCloseTo(660e6 - bend - running, -1);
  });

  it('counts the bend alone while speed and power are not known', () => {
    const bare = { ...mill, demands: { ...mill.demands, speed: undefined } };
    expect(numbersOf(atYield(bare)).stress).toBeCloseTo(660e6 - bend, -1);
  });

  it('waits for the wheel', () => {
    const bare = { ...mill, mill: { ...mill.mill, wheelDiameter1: undefined } };
    expect(atYield(bare)).toMatchObject({ ready: false, waitsFor: ['mill.wheelDiameter1'] });
  });
});

describe('lifeEdge', () => {
  it('is today’s stress where all of today’s life is to be kept', () => {
    const kept = { ...mill, demands: { ...mill.demands, lifeKept: 1 } };
    expect(numbersOf(life(kept)).stress).toBe(100e6);
  });

  it('lies above it by a twentieth of the peak for four fifths and an exponent of nine', () => {
    const running = (0.2512 * 576 + 187.5) / 29e-6;
    const beside = bend + running;
    const expected = (100e6 + beside) * 0.8 ** (-2 / 9) - beside;
    expect(numbersOf(life(mill)).stress).toBeCloseTo(expected, -1);
  });

  it('refuses an exponent that takes it beyond all numbers', () => {
    const steep = { ...mill, demands: { ...mill.demands, lifeExponent: 1e-9 } };
    expect(refusalOf(life(steep))).toBe('beyondNumbers');
  });
});
