import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  collarTorque,
  newCollarDiameter,
  wornCollarDiameter,
} from '../../../src/core/screw/collar.ts';
import { evenly } from '../../evenly.ts';

const ring = fc
  .tuple(evenly(0, 0.1), fc.double({ min: 1e-4, max: 0.1, noNaN: true }))
  .map(([innerDiameter, width]) => ({ innerDiameter, outerDiameter: innerDiameter + width }));

describe('wornCollarDiameter', () => {
  it('matches Bhandari, Design of Machine Elements, Example 6.1: 100 and 65 mm give 82.5 mm', () =>
    expect(wornCollarDiameter({ outerDiameter: 0.1, innerDiameter: 0.065 })).toBeCloseTo(
      0.0825,
      14,
    ));
});

describe('newCollarDiameter', () => {
  it('is 2(Do³ − Di³)/(3(Do² − Di²)): derived here, 50 and 26 mm give 39.263 mm', () =>
    expect(newCollarDiameter({ outerDiameter: 0.05, innerDiameter: 0.026 })).toBeCloseTo(
      (2 * (0.05 ** 3 - 0.026 ** 3)) / (3 * (0.05 ** 2 - 0.026 ** 2)),
      12,
    ));
  it('is two thirds of the diameter for a solid end', () =>
    expect(newCollarDiameter({ outerDiameter: 0.03, innerDiameter: 0 })).toBeCloseTo(0.02, 14));
  it('lies between the worn-in one and the outside', () =>
    fc.assert(
      fc.property(ring, (collar) => {
        const fresh = newCollarDiameter(collar);
        expect(fresh).toBeGreaterThanOrEqual(wornCollarDiameter(collar) * (1 - 1e-12));
        expect(fresh).toBeLessThan(collar.outerDiameter);
      }),
    ));
  it('agrees with the worn-in one where the ring is narrow', () =>
    expect(newCollarDiameter({ outerDiameter: 0.0300001, innerDiameter: 0.03 })).toBeCloseTo(
      0.03000005,
      12,
    ));
});

describe('a ring', () => {
  it.each([
    [{ outerDiameter: 0, innerDiameter: 0 }, /outerDiameter must be above 0 m/],
    [{ outerDiameter: 0.05, innerDiameter: -0.01 }, /innerDiameter must be at least 0 m/],
    [{ outerDiameter: 0.05, innerDiameter: 0.05 }, /innerDiameter must be below 0.05 m/],
  ])('is refused if %o', (wrong, message) => {
    expect(() => wornCollarDiameter(wrong)).toThrow(message);
    expect(() => newCollarDiameter(wrong)).toThrow(message);
  });
});

describe('collarTorque', () => {
  const collar = { collarFriction: 0.12, collarDiameter: 0.036 };
  it('is thrust times friction times radius: 9000 N at 0.12 on 18 mm is 19.44 N·m', () =>
    expect(collarTorque(collar, 9000)).toBeCloseTo(19.44, 10));
  it('is nothing without friction', () =>
    expect(collarTorque({ ...collar, collarFriction: 0 }, 9000)).toBe(0));
  it.each([
    [{ collarFriction: -0.1 }, 1, /collarFriction must be at least 0 \(was -0.1\)/],
    [{ collarDiameter: Number.NaN }, 1, /collarDiameter must be at least 0 m/],
    [{}, -1, /thrust must be at least 0 N/],
  ])('refuses %o with %s N', (wrong, thrust, message) =>
    expect(() => collarTorque({ ...collar, ...wrong }, thrust)).toThrow(message),
  );
});
