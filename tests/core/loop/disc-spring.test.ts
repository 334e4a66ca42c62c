import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  discDeflection,
  discForce,
  discStiffness,
  isWithinWorkingShare,
} from '../../../src/core/loop/disc-spring.ts';

const disc = {
  outerDiameter: 0.05,
  innerDiameter: 0.0254,
  thickness: 0.003,
  coneHeight: 0.0011,
  youngsModulus: 206e9,
  poissonsRatio: 0.3,
};
const anyDisc = fc
  .record({
    innerDiameter: fc.double({ min: 0.005, max: 0.04, noNaN: true }),
    ratio: fc.double({ min: 1.5, max: 2.5, noNaN: true }),
    thickness: fc.double({ min: 0.0005, max: 0.004, noNaN: true }),
    cone: fc.double({ min: 0.1, max: 1.3, noNaN: true }),
  })
  .map(({ innerDiameter, ratio, thickness, cone }) => ({
    ...disc,
    innerDiameter,
    outerDiameter: innerDiameter * ratio,
    thickness,
    coneHeight: thickness * cone,
  }));
const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });

describe('discForce', () => {
  it('matches the catalogue value of DIN 2093 for 50 x 25.4 x 3, from memory: 12 kN at 0.75 h₀', () =>
    expect(Math.abs(discForce(disc, 0.000825) / 12_000 - 1)).toBeLessThan(0.005));
  it('is what Almen and Laszlo give: 11 976 N, derived here', () =>
    expect(discForce(disc, 0.000825)).toBeCloseTo(11_976.450390550945, 7));
  it('is nothing on the free disc', () => expect(discForce(disc, 0)).toBe(0));
  it('grows with the modulus alone in proportion', () =>
    expect(discForce({ ...disc, youngsModulus: 412e9 }, 0.0005)).toBeCloseTo(
      2 * discForce(disc, 0.0005),
      8,
    ));
});

describe('discStiffness', () => {
  it('is the slope of the force', () =>
    fc.assert(
      fc.property(anyDisc, share, (any, part) => {
        const at = part * any.coneHeight;
        const step = 1e-4 * any.coneHeight * Math.min(part, 1 - part);
        const slope = (discForce(any, at + step) - discForce(any, at - step)) / (2 * step);
        expect(discStiffness(any, at) / slope).toBeCloseTo(1, 4);
      }),
    ));
  it('softens as the disc flattens', () =>
    expect(discStiffness(disc, 0.0011)).toBeLessThan(discStiffness(disc, 0)));
  it('turns negative in a steep disc', () =>
    expect(discStiffness({ ...disc, coneHeight: 0.006 }, 0.006)).toBeLessThan(0));
});

describe('discDeflection', () => {
  it('undoes discForce', () =>
    fc.assert(
      fc.property(anyDisc, share, (any, part) => {
        const at = part * any.coneHeight;
        expect(discDeflection(any, discForce(any, at)) / any.coneHeight).toBeCloseTo(part, 8);
      }),
    ));
  it('stays within the travel at both ends', () =>
    fc.assert(
      fc.property(anyDisc, (any) => {
        expect(discDeflection(any, 0)).toBeCloseTo(0, 12);
        expect(discDeflection(any, 0)).toBeGreaterThanOrEqual(0);
        const flat = discForce(any, any.coneHeight);
        expect(discDeflection(any, flat)).toBeLessThanOrEqual(any.coneHeight);
        expect(discDeflection(any, flat)).toBeCloseTo(any.coneHeight, 8);
      }),
    ));
  it('refuses a disc that snaps through and a force beyond flat', () => {
    expect(() => discDeflection({ ...disc, coneHeight: 0.006 }, 1)).toThrow(
      /coneHeight over thickness must be below 1.414\d+ \(was 2\)/,
    );
    expect(() => discDeflection(disc, 1e6)).toThrow(
      /^force must be between 0 and \d+\.\d+ N \(was 1000000\)$/,
    );
  });
});

describe('isWithinWorkingShare', () => {
  it('ends at three quarters of the cone height: common practice, no source', () => {
    expect(isWithinWorkingShare({ ...disc, coneHeight: 1 }, 0.75)).toBe(true);
    expect(isWithinWorkingShare({ ...disc, coneHeight: 1 }, 0.7501)).toBe(false);
  });
  it('counts from the cone height of the disc itself: 0.825 of 1.1 mm', () => {
    expect(isWithinWorkingShare(disc, 0.824e-3)).toBe(true);
    expect(isWithinWorkingShare(disc, 0.826e-3)).toBe(false);
  });
  it('refuses a flat disc', () =>
    expect(() => isWithinWorkingShare({ ...disc, coneHeight: 0 }, 0)).toThrow(
      /coneHeight must be above 0 m/,
    ));
});

describe('a disc', () => {
  it.each([
    [{ innerDiameter: 0 }, /innerDiameter must be above 0 m/],
    [{ innerDiameter: 0.05 }, /innerDiameter must be below 0.05 m/],
    [{ thickness: -1 }, /thickness must be above 0 m/],
    [{ coneHeight: Number.NaN }, /coneHeight must be above 0 m/],
    [{ youngsModulus: 0 }, /youngsModulus must be above 0 Pa/],
    [{ poissonsRatio: 0.6 }, /poissonsRatio must be between 0 and 0.5/],
  ])('is refused if %o', (wrong, message) => {
    expect(() => discForce({ ...disc, ...wrong }, 0)).toThrow(message);
    expect(() => discStiffness({ ...disc, ...wrong }, 0)).toThrow(message);
  });
  it('is refused a deflection beyond flat', () => {
    expect(() => discForce(disc, 0.0012)).toThrow(/deflection must be between 0 and 0.0011 m/);
    expect(() => discStiffness(disc, -1e-9)).toThrow(/deflection must be between 0 and 0.0011 m/);
  });
});
