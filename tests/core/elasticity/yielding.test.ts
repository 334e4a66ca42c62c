import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { permanentStrain, stressAtStrain } from '../../../src/core/elasticity/yielding.ts';
import { evenly } from '../../evenly.ts';

const steel = { youngsModulus: 200e9, elasticLimit: 1000e6, hardeningShare: 0.05 };
const anyStrain = evenly(0, 0.05);

describe('stressAtStrain', () => {
  it('is Hooke below the limit: 0.4 % of 200 GPa is 800 MPa', () =>
    expect(stressAtStrain(0.004, steel)).toBeCloseTo(800e6, 0));
  it('rises at the hardening slope beyond: 0.5 % gives the limit, 1 % gives 50 MPa more', () => {
    expect(stressAtStrain(0.005, steel)).toBeCloseTo(1000e6, 0);
    expect(stressAtStrain(0.01, steel)).toBeCloseTo(1050e6, 0);
  });
  it('never falls as the strain grows', () =>
    fc.assert(
      fc.property(anyStrain, anyStrain, (strain, more) => {
        expect(stressAtStrain(strain + more, steel)).toBeGreaterThanOrEqual(
          stressAtStrain(strain, steel),
        );
      }),
    ));
  it.each([-1e-6, Number.NaN, Number.POSITIVE_INFINITY])('refuses a strain of %s', (strain) =>
    expect(() => stressAtStrain(strain, steel)).toThrow(/strain must be at least 0/),
  );
  it.each([
    [{ ...steel, youngsModulus: 0 }, /youngsModulus must be above 0 Pa/],
    [{ ...steel, elasticLimit: -1 }, /elasticLimit must be above 0 Pa/],
    [{ ...steel, hardeningShare: 1.1 }, /hardeningShare must be between 0 and 1/],
  ])('refuses a steel that cannot be', (wrong, message) =>
    expect(() => stressAtStrain(0.001, wrong)).toThrow(message),
  );
});

describe('permanentStrain', () => {
  it('is exactly nothing up to the limit, or steel that came all the way back would be said to have yielded', () =>
    fc.assert(
      fc.property(evenly(0, 0.005), (strain) => {
        expect(permanentStrain(strain, steel)).toBe(0);
      }),
    ));
  it('is the strain less what comes back along the modulus', () =>
    fc.assert(
      fc.property(anyStrain, (strain) => {
        const comesBack = stressAtStrain(strain, steel) / steel.youngsModulus;
        expect(permanentStrain(strain, steel)).toBeCloseTo(strain - comesBack, 15);
      }),
    ));
  it('is what the unloading line leaves: 1 % less 1050 MPa over 200 GPa is 0.475 %', () =>
    expect(permanentStrain(0.01, steel)).toBeCloseTo(0.00475, 12));
  it('is the whole excess in a steel that does not harden', () =>
    expect(permanentStrain(0.01, { ...steel, hardeningShare: 0 })).toBeCloseTo(0.005, 12));
});
