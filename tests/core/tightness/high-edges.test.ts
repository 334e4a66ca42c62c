import { describe, expect, it } from 'vitest';
import {
  stressAtWheelLimit,
  stressToKeepLife,
  stressToPeak,
} from '../../../src/core/tightness/high-edges.ts';
import { swtLifeRatio } from '../../../src/core/wheel/life.ts';

const band = { bendingStress: 400e6, edgeFactor: 1.05, runningRise: 10e6 };

describe('stressToPeak', () => {
  it('is 230 MPa below 660 MPa, by hand: 660 − 1.05 × 400 − 10', () =>
    expect(stressToPeak(band, 660e6)).toBeCloseTo(230e6, 3));

  it('is the peak itself on an endless wheel at rest', () =>
    expect(stressToPeak({ ...band, bendingStress: 0, runningRise: 0 }, 660e6)).toBe(660e6));

  it('falls below nothing where the bend alone is too much', () =>
    expect(stressToPeak({ ...band, bendingStress: 700e6 }, 660e6)).toBeLessThan(0));

  it('refuses no peak and a rise below nothing', () => {
    expect(() => stressToPeak(band, 0)).toThrow('allowedPeak must be above 0 Pa');
    expect(() => stressToPeak({ ...band, runningRise: -1 }, 1)).toThrow('runningRise must be');
  });
});

describe('stressToKeepLife', () => {
  const wish = { today: 110e6, kept: 0.8, exponent: 9 };
  const peakAt = (stress: number) => stress + 430e6;
  const amplitude = 210e6;

  // Smith, Watson and Topper, Dowling 9.7, from memory.
  it('leaves the wanted part of today’s life', () => {
    const cycle = { peak: peakAt(stressToKeepLife(band, wish)), amplitude };
    expect(swtLifeRatio(cycle, { peak: peakAt(110e6), amplitude }, 9)).toBeCloseTo(0.8, 12);
  });

  it('is today’s where all is to be kept, and less where more is', () => {
    expect(stressToKeepLife(band, { ...wish, kept: 1 })).toBe(110e6);
    expect(stressToKeepLife(band, { ...wish, kept: 1.5 })).toBeLessThan(110e6);
  });

  it('refuses nothing kept and no exponent', () => {
    expect(() => stressToKeepLife(band, { ...wish, kept: 0 })).toThrow('kept must be above 0');
    expect(() => stressToKeepLife(band, { ...wish, exponent: 0 })).toThrow(
      'exponent must be above 0',
    );
  });
});

describe('stressAtWheelLimit', () => {
  it('shares the force between two strands, by hand: 6000 N on twice 30 mm²', () =>
    expect(stressAtWheelLimit(6000, 30e-6)).toBeCloseTo(100e6, 3));

  it('refuses no limit', () =>
    expect(() => stressAtWheelLimit(0, 30e-6)).toThrow('limit must be above 0 N'));
});
