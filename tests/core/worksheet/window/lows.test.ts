import { describe, expect, it } from 'vitest';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { worksheetChain } from '../../../../src/core/worksheet/predict/chain.ts';
import { gripEdge, runningBand, straightEdge } from '../../../../src/core/worksheet/window/lows.ts';
import { mills } from '../../../published/mills/mill.ts';
import { numbersOf, refusalOf } from '../../fixtures/ready.ts';
import { demandingMill as mill } from '../fixtures/demanding-mill.ts';
import { derivedOf } from '../fixtures/derived-of.ts';

const straight = (worksheet: Worksheet) => straightEdge(worksheet, worksheetChain(worksheet));
const grip = (worksheet: Worksheet) => gripEdge(worksheet, worksheetChain(worksheet));

describe('runningBand', () => {
  it('weighs the band with its teeth', () => {
    const { band, power } = numbersOf(runningBand(mill, worksheetChain(mill)));
    expect(band.massPerLength).toBeCloseTo(derivedOf('A', 'm mass per metre (kg/m)'), 10);
    expect([band.speed, power]).toEqual([24, 9000]);
  });

  it('waits for what only the mill can tell', () => {
    const bare = { ...mill, demands: { ...mill.demands, speed: undefined, power: undefined } };
    const running = runningBand(bare, worksheetChain(bare));
    expect(running).toMatchObject({ ready: false, waitsFor: ['demands.speed', 'demands.power'] });
  });
});

describe('gripEdge', () => {
  // (e^{0.25π} + 1.2)/(e^{0.25π} − 1.2) × 187.5 N + m·v² = 0.2512 × 576 N, on 29 mm².
  it('is as worked by hand for mill A on rigid centers', () => {
    const worksheet = { ...mill, demands: { ...mill.demands, rimFriction: 0.25 } };
    const ratio = Math.exp(0.25 * Math.PI);
    const pull = (187.5 * (ratio + 1.2)) / (ratio - 1.2);
    expect(numbersOf(grip(worksheet)).stress).toBeCloseTo((pull + 0.2512 * 576) / 29e-6, 0);
  });

  it('lies far under the target of each invented mill: grip is not why bands are tight', () =>
    expect(numbersOf(grip(mill)).stress).toBeLessThan(0.5 * Number(mills['A']?.n('target'))));
});

describe('straightEdge', () => {
  it('lies near the target where the push may move the teeth as far as it does there', () => {
    const movement = derivedOf('A', 'tooth-tip deflection at 30 N (mm)') / 1e3;
    const { stress } = numbersOf(straight({ ...mill, demands: { ...mill.demands, movement } }));
    // Worked out with clamped ends; between rollers the span is a little softer.
    expect(stress).toBeGreaterThan(110e6);
    expect(stress).toBeLessThan(118e6);
  });

  it('falls where more is granted', () => {
    const eased = { ...mill, demands: { ...mill.demands, movement: 6e-3 } };
    expect(numbersOf(straight(eased)).stress).toBeLessThan(numbersOf(straight(mill)).stress);
  });

  it('refuses a band thicker than wide', () => {
    const thick = { ...mill, band: { ...mill.band, thickness: 0.03 } };
    expect(refusalOf(straight(thick))).toBe('outOfRange');
  });
});
