import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { threadProfile } from '../../../src/core/threads/profile.ts';

const mm = 1e-3;
const inch = 0.0254;
const families = ['metric', 'unified', 'acme', 'trapezoidal'] as const;

describe('threadProfile', () => {
  it.each([
    [12, 1.75, 84.3],
    [16, 2, 157],
    [20, 2.5, 245],
    [24, 3, 353],
    [30, 3.5, 561],
    [36, 4, 817],
  ])('of M%s has the printed stress area of ISO 898-1', (diameter, pitch, printed) => {
    const profile = threadProfile('metric', { majorDiameter: diameter * mm, pitch: pitch * mm });
    expect(Number(((profile.stressArea ?? 0) * 1e6).toPrecision(3))).toBe(printed);
  });
  it.each([
    [16, 1.5, 14.16],
    [20, 2, 17.546],
    [20, 1.5, 18.16],
  ])('of M%s x %s has the printed root of the screw, d₃', (diameter, pitch, printed) => {
    const profile = threadProfile('metric', { majorDiameter: diameter * mm, pitch: pitch * mm });
    expect(Math.abs(profile.minorDiameter / mm - printed)).toBeLessThan(6e-4);
  });
  it.each([
    [0.5, 13, 0.45, 0.1419],
    [0.75, 10, 0.685, 0.334],
    [1.125, 7, 1.0322, 0.763],
    [1.5, 6, 1.3917, 1.405],
  ])('of %s-%s UNC is that printed in ASME B1.1', (diameter, perInch, middle, area) => {
    const size = { majorDiameter: diameter * inch, pitch: inch / perInch };
    const profile = threadProfile('unified', size);
    expect(Math.abs(profile.pitchDiameter / inch - middle)).toBeLessThan(6e-5);
    expect(Math.abs((profile.stressArea ?? 0) / inch ** 2 - area)).toBeLessThan(6e-4);
  });
  it('of a Unified thread has the basic minor diameter, 5/4 of the sharp height below', () => {
    const profile = threadProfile('unified', { majorDiameter: 0.75 * inch, pitch: 0.1 * inch });
    expect(profile.minorDiameter / inch).toBeCloseTo(0.75 - 0.1082532, 7);
  });
  it.each([
    [0.75, 6, 0.6667, 0.5833],
    [1, 5, 0.9, 0.8],
    [1.375, 4, 1.25, 1.125],
  ])('of %s-%s Acme is that printed in ASME B1.5', (diameter, perInch, middle, minor) => {
    const profile = threadProfile('acme', {
      majorDiameter: diameter * inch,
      pitch: inch / perInch,
    });
    expect(profile.pitchDiameter / inch).toBeCloseTo(middle, 4);
    expect(profile.minorDiameter / inch).toBeCloseTo(minor, 4);
  });
  it.each([
    [8, 1.5, 7.25, 6.2],
    [12, 3, 10.5, 8.5],
    [16, 2, 15, 13.5],
    [20, 4, 18, 15.5],
    [30, 6, 27, 23],
    [44, 7, 40.5, 36],
    [60, 14, 53, 44],
  ])('of Tr%s x %s is that printed in ISO 2904', (diameter, pitch, middle, root) => {
    const size = { majorDiameter: diameter * mm, pitch: pitch * mm };
    const profile = threadProfile('trapezoidal', size);
    expect(profile.pitchDiameter / mm).toBeCloseTo(middle, 9);
    expect(profile.minorDiameter / mm).toBeCloseTo(root, 9);
  });
  it('gives a stress area only where the standard does', () => {
    const size = { majorDiameter: 0.02, pitch: 0.004 };
    expect(threadProfile('acme', size)).not.toHaveProperty('stressArea');
    expect(threadProfile('trapezoidal', size)).not.toHaveProperty('stressArea');
  });
  it.each(families)('keeps root, middle and outside in order for %s', (family) =>
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 0.4, noNaN: true }), (share) => {
        const profile = threadProfile(family, { majorDiameter: 0.03, pitch: 0.03 * share });
        expect(profile.minorDiameter).toBeGreaterThan(0);
        expect(profile.minorDiameter).toBeLessThan(profile.pitchDiameter);
        expect(profile.pitchDiameter).toBeLessThan(profile.majorDiameter);
      }),
    ),
  );
  it('refuses a pitch of half the diameter', () =>
    expect(() => threadProfile('metric', { majorDiameter: 0.02, pitch: 0.01 })).toThrow(
      /pitch must be below 0.01 m/,
    ));
});
