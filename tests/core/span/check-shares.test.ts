import { describe, expect, it } from 'vitest';
import { endsShare, pressShares } from '../../../src/core/span/check-shares.ts';

const strip = { span: 0.55, thickness: 0.9e-3, youngsModulus: 205e9, stress: 100e6 };

describe('what the ends of a plucked span leave open', () => {
  // By hand: √(205 GPa × 0.81 mm² / 12 / 100 MPa) = 11.763 mm; twice that over 550 − 11.763 mm is 4.371 %.
  it('matches a hand-worked case: 4.371 %', () =>
    expect(100 * endsShare(strip)).toBeCloseTo(4.371, 2));

  it('goes with the thickness, and one over the root of the stress, on a long span', () => {
    const long = { ...strip, span: 1e4 };
    expect(endsShare({ ...long, thickness: 1.8e-3 }) / endsShare(long)).toBeCloseTo(2, 5);
    expect(endsShare({ ...long, stress: 400e6 }) / endsShare(long)).toBeCloseTo(0.5, 5);
  });

  it('refuses a slack band', () =>
    expect(() => endsShare({ ...strip, stress: 0 })).toThrow('tension must be above 0 N'));
});

describe('what a press leaves open', () => {
  it('is the ruler’s tenth of a millimetre first: by hand 2 % of 5 mm, 0.22 % of 1350 mm', () => {
    const pushed = { span: 1.35, deflection: 5e-3, bodyWidth: 27e-3, thickness: 0.9e-3 };
    const shares = pressShares(pushed);
    expect(shares.deflection).toBeCloseTo(0.02, 12);
    expect(shares.span).toBeCloseTo(3 / 1350, 12);
    expect(shares.weight).toBe(0.01);
    expect(pressShares({ ...pushed, deflection: 1e-2 }).deflection).toBeCloseTo(0.01, 12);
  });
});
