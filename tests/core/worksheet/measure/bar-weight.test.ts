import { describe, expect, it } from 'vitest';
import {
  shiftAtShare,
  worksheetBarWeight,
} from '../../../../src/core/worksheet/measure/bar-weight.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millA } from '../fixtures/mills.ts';

const bar = (barHeight: number | undefined, barWeight: number | undefined) => ({
  ...millA,
  rig: { ...millA.rig, barHeight, barWeight },
});
// 1 kN in one strand of mill A: σ·L₀/E of 1000 N over 29 mm², on 0.4 m.
const stretchAt1kN = (1000 / 29e-6 / 205e9) * 0.4;

describe('worksheetBarWeight', () => {
  it('matches the hand-worked case: 12 mm and 8 N at 1 kN shift the reading by 48 µm', () => {
    const { shiftAtTop } = numbersOf(worksheetBarWeight(bar(0.012, 8), () => stretchAt1kN));
    expect(shiftAtTop).toBeCloseTo(48e-6, 12);
  });

  it('turns its sign with the bar below the band', () => {
    const below = numbersOf(worksheetBarWeight(bar(-0.012, 8), () => stretchAt1kN));
    expect(below.shiftAtTop).toBeCloseTo(-48e-6, 12);
  });

  it('is none where height and weight are both empty, and waits where only one is', () => {
    expect(numbersOf(worksheetBarWeight(millA, () => stretchAt1kN)).shiftAtTop).toBe(0);
    expect(worksheetBarWeight(bar(0.012, undefined), () => stretchAt1kN)).toEqual({
      ready: false,
      waitsFor: ['rig.barWeight'],
    });
  });

  it('waits for each of its boxes that is empty, by its name', () => {
    const { band, rig } = bar(undefined, 8);
    const open = {
      ...millA,
      band: { ...band, youngsModulus: undefined, bodyWidth: undefined, thickness: undefined },
      rig: { ...rig, gaugeLength: undefined },
    };
    expect(worksheetBarWeight(open, () => stretchAt1kN)).toEqual({
      ready: false,
      waitsFor: [
        'rig.barHeight',
        'rig.gaugeLength',
        'band.youngsModulus',
        'band.bodyWidth',
        'band.thickness',
      ],
    });
  });
});

describe('shiftAtShare', () => {
  it('grows as one over the load, down to a tenth of it', () => {
    expect(shiftAtShare(2e-6, 1)).toBe(2e-6);
    expect(shiftAtShare(2e-6, 0.5)).toBe(4e-6);
    expect(shiftAtShare(2e-6, 0.1)).toBeCloseTo(2e-5, 15);
    expect(shiftAtShare(2e-6, 0.001)).toBeCloseTo(2e-5, 15);
    expect(shiftAtShare(2e-6, -3)).toBeCloseTo(2e-5, 15);
  });
});
