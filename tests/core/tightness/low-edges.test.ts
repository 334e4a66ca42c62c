import { describe, expect, it } from 'vitest';
import { toothTipCompliance } from '../../../src/core/span/twist.ts';
import { stressToGrip, stressToKeepStraight } from '../../../src/core/tightness/low-edges.ts';

const grip = {
  band: { massPerLength: 0.25, speed: 20 },
  power: 8000,
  grip: { friction: Math.log(3) / Math.PI, wrap: Math.PI }, // exp(μθ) = 3
  share: 0,
  area: 30e-6,
  margin: 1,
};

describe('stressToGrip', () => {
  // m·v² = 100 N; P/(2v) = 200 N; 200 × (3 + 1)/(3 − 1) = 400 N; (400 + 100) N on 30 mm².
  it('is 16.67 MPa for 8 kW at 20 m/s on rigid centers, by hand', () =>
    expect(stressToGrip(grip)).toBeCloseTo(500 / 30e-6, 3));

  it('wants no share for speed where a weight holds the wheel', () =>
    expect(stressToGrip({ ...grip, share: 1 })).toBeCloseTo(400 / 30e-6, 3));

  // Flat belt at the point of slip: (F₁ − mv²)/(F₂ − mv²) = exp(μθ), Shigley 17-2, from memory.
  it('leaves Euler and Eytelwein’s ratio between the strands', () => {
    const force = stressToGrip(grip) * grip.area;
    expect((force + 200 - 100) / (force - 200 - 100)).toBeCloseTo(3, 12);
  });

  it('grows with the margin, and nothing is enough where the rim cannot give it', () => {
    expect(stressToGrip({ ...grip, margin: 1.2 })).toBeGreaterThan(stressToGrip(grip));
    expect(stressToGrip({ ...grip, margin: 3 })).toBe(Number.POSITIVE_INFINITY);
  });

  it('is what speed alone asks for where nothing is cut', () =>
    expect(stressToGrip({ ...grip, power: 0 })).toBeCloseTo(100 / 30e-6, 3));

  it('refuses a standing band, a margin below 1 and a share above 1', () => {
    const standing = { ...grip, band: { ...grip.band, speed: 0 } };
    expect(() => stressToGrip(standing)).toThrow('speed must be above 0 m/s');
    expect(() => stressToGrip({ ...grip, margin: 0.9 })).toThrow('margin must be at least 1');
    expect(() => stressToGrip({ ...grip, share: 1.1 })).toThrow('share must be');
  });
});

const straight = {
  youngsModulus: 205e9,
  shearModulus: 79e9,
  width: 0.03,
  thickness: 0.001,
  span: 0.6,
  toothOffset: 0.02,
  ends: 'guides',
  push: 30,
  movement: 3e-3,
} as const;

describe('stressToKeepStraight', () => {
  it('is the stress at which the push moves the teeth by that much', () => {
    const tension = stressToKeepStraight(straight) * 0.03 * 0.001;
    expect(30 * toothTipCompliance({ ...straight, tension }).total).toBeCloseTo(3e-3, 12);
  });

  it('is nothing where the steel alone is stiff enough', () => {
    expect(stressToKeepStraight({ ...straight, movement: 1 })).toBe(0);
    expect(stressToKeepStraight({ ...straight, thickness: 0.02 })).toBe(0);
  });

  // A string without stiffness, pushed at its middle: F/d = 4T/s.
  it('comes to the string’s own where the strip is of thin soft steel', () => {
    const thin = { ...straight, youngsModulus: 1e-3, shearModulus: 1e-3, toothOffset: 0 };
    expect(stressToKeepStraight(thin)).toBeCloseTo((30 * 0.6) / (4 * 3e-3) / 30e-6, 0);
  });

  it('falls where guides move in', () =>
    expect(stressToKeepStraight({ ...straight, span: 0.4 })).toBeLessThan(
      stressToKeepStraight(straight),
    ));

  it('refuses no push and no movement', () => {
    expect(() => stressToKeepStraight({ ...straight, push: 0 })).toThrow('push must be above 0 N');
    expect(() => stressToKeepStraight({ ...straight, movement: 0 })).toThrow(
      'movement must be above 0 m',
    );
  });
});
