import { describe, expect, it } from 'vitest';
import { peakStress, smallerWheel } from '../../../../src/core/worksheet/decide/peak-stress.ts';
import { worksheetSection } from '../../../../src/core/worksheet/predict/section.ts';
import { millA, millC } from '../fixtures/mills.ts';

const bare = { wheelDiameter1: undefined, wheelDiameter2: undefined, centreDistance: undefined };

describe('smallerWheel', () => {
  it('is the smaller of those that are filled', () => {
    expect(smallerWheel(millC)).toBe(0.45);
    expect(smallerWheel(millA)).toBe(0.52);
    expect(smallerWheel({ ...millC, mill: { ...millC.mill, wheelDiameter1: -1 } })).toBe(0.45);
    expect(smallerWheel({ ...millA, mill: bare })).toBeUndefined();
  });
});

describe('peakStress', () => {
  const section = worksheetSection(millA);

  it('matches the hand-worked case: 110 MPa and 1.05 of 205 GPa × 1/521', () =>
    expect(peakStress(millA, 110e6, section)).toBeCloseTo(110e6 + (1.05 * 205e9) / 521, 0));

  it('is not known without wheel, section or modulus', () => {
    expect(peakStress({ ...millA, mill: bare }, 110e6, section)).toBeUndefined();
    expect(peakStress(millA, 110e6, { ready: false, waitsFor: [] })).toBeUndefined();
    const band = { ...millA.band, youngsModulus: undefined };
    expect(peakStress({ ...millA, band }, 110e6, section)).toBeUndefined();
  });
});
