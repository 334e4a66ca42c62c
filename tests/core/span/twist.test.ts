import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  edgewiseBendingStiffness,
  flatBendingStiffness,
  lateralStiffnessClamped,
} from '../../../src/core/span/beam-under-tension.ts';
import {
  edgewiseStiffness,
  toothOffset,
  toothTipCompliance,
  torsionConstant,
  torsionFrequency,
  twistingStiffness,
} from '../../../src/core/span/twist.ts';

const strip = {
  tension: 4000,
  youngsModulus: 205e9,
  shearModulus: 79e9,
  width: 0.03,
  thickness: 0.001,
  span: 0.6,
  toothOffset: 0.02,
  ends: 'clamped',
} as const;
const note = {
  stress: 110e6,
  density: 7850,
  shearModulus: 79e9,
  width: 0.03,
  thickness: 0.001,
  span: 0.6,
};

describe('torsionConstant', () => {
  it('is 9.79 mm⁴ for 30 mm by 1 mm, by hand: 30/3 × (1 − 0.021)', () =>
    expect(torsionConstant(strip) * 1e12).toBeCloseTo(9.79, 10));

  // Torsion of a square bar is 0.1406 a⁴ (Roark, from memory); the strip's form is rough there.
  it('is off by an eighth only for a square bar, as far from a strip as can be', () =>
    expect(torsionConstant({ width: 1, thickness: 1 }) / 0.1406).toBeCloseTo(0.877, 2));

  it('refuses no thickness, no width, and a strip on edge', () => {
    expect(() => torsionConstant({ width: 1, thickness: 0 })).toThrow(
      'thickness must be above 0 m',
    );
    expect(() => torsionConstant({ width: 0, thickness: 1 })).toThrow('width must be above 0 m');
    expect(() => torsionConstant({ width: 1, thickness: 2 })).toThrow(
      'thickness must be at most 1 m',
    );
  });
});

describe('twistingStiffness', () => {
  it('adds steel and pull, by hand: 4 × (79e9 × 9.79e-12 + 4000 × 901e-6/12)/0.6', () =>
    expect(twistingStiffness(strip)).toBeCloseTo((4 * (0.77341 + 0.300333333)) / 0.6, 6));

  it('grows by 4r²/s per newton of tension', () =>
    fc.assert(
      fc.property(fc.double({ min: 10, max: 20000, noNaN: true }), (tension) => {
        const gain = twistingStiffness({ ...strip, tension }) - twistingStiffness(strip);
        expect(gain).toBeCloseTo(((tension - 4000) * 4 * 901e-6) / 12 / 0.6, 8);
      }),
    ));

  it.each(['tension', 'shearModulus', 'span'])('refuses %s of 0', (name) =>
    expect(() => twistingStiffness({ ...strip, [name]: 0 })).toThrow(`${name} must be above 0`),
  );
});

describe('toothOffset', () => {
  it('is 20.5 mm for a 35 mm band with 29 mm of body, by hand', () =>
    expect(toothOffset(0.035, 0.029)).toBeCloseTo(0.0205, 15));

  it('refuses a body wider than the band, and sizes of 0', () => {
    expect(() => toothOffset(0.03, 0.031)).toThrow('bodyWidth must be at most 0.03 m (was 0.031)');
    expect(() => toothOffset(0, 0)).toThrow('widthOverTeeth must be above 0 m');
    expect(() => toothOffset(1, 0)).toThrow('bodyWidth must be above 0 m');
  });
});

describe('toothTipCompliance', () => {
  it('is push and twist one after the other', () => {
    const { push, twist, total, twistShare } = toothTipCompliance(strip);
    const bendingStiffness = flatBendingStiffness(strip);
    expect(1 / push).toBeCloseTo(lateralStiffnessClamped({ ...strip, bendingStiffness }), 6);
    expect(twist).toBeCloseTo(0.02 ** 2 / twistingStiffness(strip), 15);
    expect(total).toBeCloseTo(push + twist, 15);
    expect(twistShare).toBeCloseTo(twist / total, 15);
  });

  it('has no twist for a push at the middle of the body', () =>
    expect(toothTipCompliance({ ...strip, toothOffset: 0 }).twistShare).toBe(0));

  it('falls as the tension rises', () =>
    fc.assert(
      fc.property(fc.double({ min: 100, max: 20000, noNaN: true }), (tension) => {
        const tighter = toothTipCompliance({ ...strip, tension: tension * 1.1 }).total;
        expect(tighter).toBeLessThan(toothTipCompliance({ ...strip, tension }).total);
      }),
    ));

  it('refuses an offset below 0', () =>
    expect(() => toothTipCompliance({ ...strip, toothOffset: -1 })).toThrow('toothOffset must be'));
});

describe('edgewiseStiffness', () => {
  it('is that of the strip on edge: 192 EI/s³ and a little more for the pull', () => {
    const beam = (192 * edgewiseBendingStiffness(strip)) / 0.6 ** 3;
    const ratio = edgewiseStiffness(strip) / beam;
    expect(ratio).toBeGreaterThan(1.03);
    expect(ratio).toBeLessThan(1.4);
    expect(edgewiseStiffness({ ...strip, tension: 0.1 }) / beam).toBeCloseTo(1, 5);
  });
});

describe('torsionFrequency', () => {
  it('matches the hand-worked case: √((79e9 × 9.79e-12 ÷ 2.2525e-9 + 110e6)/7850)/1.2', () =>
    expect(torsionFrequency(note)).toBeCloseTo(
      Math.sqrt((0.77341 / ((0.03 * 0.001 * 901e-6) / 12) + 110e6) / 7850) / 1.2,
      8,
    ));

  it('nears the string note of the same stress for a strip too thin to resist', () =>
    expect(torsionFrequency({ ...note, thickness: 1e-9 })).toBeCloseTo(
      Math.sqrt(110e6 / 7850) / 1.2,
      6,
    ));

  it('has harmonics at whole multiples, above the plain note', () => {
    const stresses = fc.double({ min: 1e6, max: 300e6, noNaN: true });
    fc.assert(
      fc.property(stresses, fc.integer({ min: 2, max: 9 }), (stress, harmonic) => {
        const first = torsionFrequency({ ...note, stress });
        expect(torsionFrequency({ ...note, stress, harmonic }) / first).toBeCloseTo(harmonic, 12);
        expect(first).toBeGreaterThan(Math.sqrt(stress / 7850) / 1.2);
      }),
    );
  });

  it.each(['stress', 'density', 'shearModulus', 'span'])('refuses %s of 0', (name) =>
    expect(() => torsionFrequency({ ...note, [name]: 0 })).toThrow(`${name} must be above 0`),
  );

  it('refuses a harmonic of 0', () =>
    expect(() => torsionFrequency({ ...note, harmonic: 0 })).toThrow(
      'harmonic must be at least 1',
    ));
});
