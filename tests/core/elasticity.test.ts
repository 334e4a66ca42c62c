import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { elongation, poissonChange, strain, stress } from '../../src/core/elasticity.ts';
import { evenly } from '../evenly.ts';

const reading = { elongation: 0.5e-3, gaugeLength: 0.5 }; // m
const size = fc.double({ min: 1e-6, max: 10, noNaN: true });
const pull = evenly(-1e9, 1e9);
const notPositive = [0, -1, Number.NaN, Number.POSITIVE_INFINITY];

describe('strain', () => {
  it('is elongation over gauge length', () => expect(strain(reading)).toBeCloseTo(1e-3, 15));
  it('matches Gere, Mechanics of Materials, Example 1-1: 0.012 in over 16 in is 750e-6', () =>
    expect(strain({ elongation: 0.012 * 0.0254, gaugeLength: 16 * 0.0254 })).toBeCloseTo(
      750e-6,
      12,
    ));
  it('is negative where the strip grew shorter', () =>
    expect(strain({ ...reading, elongation: -0.5e-3 })).toBeCloseTo(-1e-3, 15));
  it.each(notPositive)('refuses gauge length %s and says why', (gaugeLength) =>
    expect(() => strain({ ...reading, gaugeLength })).toThrow(
      /gaugeLength must be above 0 m \(was/,
    ),
  );
  it('refuses an elongation that is no number', () =>
    expect(() => strain({ ...reading, elongation: Number.NaN })).toThrow(
      'elongation must be a finite number of m (was NaN)',
    ));
});

describe('stress', () => {
  it('matches the hand-worked case: 0.5 mm on 500 mm at 205 GPa is 205 MPa', () =>
    expect(stress(reading, 205e9)).toBeCloseTo(205e6, 0));
  it('is linear: twice the elongation, twice the stress', () =>
    expect(stress({ ...reading, elongation: 1e-3 }, 205e9)).toBeCloseTo(410e6, 0));
  it.each(notPositive)('refuses a modulus of %s', (youngsModulus) =>
    expect(() => stress(reading, youngsModulus)).toThrow(/youngsModulus must be above 0 Pa \(was/),
  );
});

describe('elongation', () => {
  it('matches OpenStax, University Physics 1, 12.3, Stretching a Rod: 1.8 mm', () => {
    const rod = { stress: (550 * 9.8) / 3e-5, youngsModulus: 200e9, gaugeLength: 2 };
    expect(elongation(rod)).toBeCloseTo(1.8e-3, 5);
  });
  it('adds up over a bar of two parts: Hibbeler, Mechanics of Materials, Example 4.2, 4.20 mm', () => {
    const rod = { stress: 80e3 / (Math.PI * 0.005 ** 2), youngsModulus: 200e9, gaugeLength: 0.6 };
    const tube = { stress: 80e3 / 400e-6, youngsModulus: 70e9, gaugeLength: 0.4 };
    expect(elongation(rod) + elongation(tube)).toBeCloseTo(4.2e-3, 5);
  });
  it('undoes stress, for any reading', () =>
    fc.assert(
      fc.property(pull, size, (stressed, gaugeLength) => {
        const back = { stress: stressed, youngsModulus: 205e9, gaugeLength };
        const again = stress({ elongation: elongation(back), gaugeLength }, 205e9);
        expect(again).toBeCloseTo(stressed, 4);
      }),
    ));
  it.each([
    [{ stress: Number.NaN }, /stress must be a finite number of Pa/],
    [{ youngsModulus: 0 }, /youngsModulus must be above 0 Pa/],
    [{ gaugeLength: -1 }, /gaugeLength must be above 0 m/],
  ])('refuses %o', (wrong, message) => {
    const strip = { stress: 1e8, youngsModulus: 205e9, gaugeLength: 0.5 };
    expect(() => elongation({ ...strip, ...wrong })).toThrow(message);
  });
});

describe('poissonChange', () => {
  const band = { stress: 150e6, youngsModulus: 205e9, poissonsRatio: 0.3, size: 1.1e-3 };
  it('matches Gere, Mechanics of Materials, Example 1-3: the pushed pipe grows 0.000509 in inside', () => {
    const pipe = {
      stress: -140e3 / ((Math.PI / 4) * (6 ** 2 - 4.5 ** 2)), // psi, and inches below: units cancel
      youngsModulus: 30e6,
      poissonsRatio: 0.3,
    };
    expect(poissonChange({ ...pipe, size: 4.5 })).toBeCloseTo(0.000509, 6);
    expect(poissonChange({ ...pipe, size: 0.75 })).toBeCloseTo(0.000085, 6);
  });
  it('thins a pulled band by a quarter of a micrometre: derived here, 1.1 mm at 150 MPa', () =>
    expect(poissonChange(band)).toBeCloseTo(-0.2415e-6, 10));
  it.each([
    [{ stress: Number.POSITIVE_INFINITY }, /stress must be a finite number of Pa/],
    [{ youngsModulus: -1 }, /youngsModulus must be above 0 Pa/],
    [{ size: 0 }, /size must be above 0 m/],
    [{ poissonsRatio: -0.1 }, /poissonsRatio must be between 0 and 0.5/],
    [{ poissonsRatio: 0.6 }, /poissonsRatio must be between 0 and 0.5/],
  ])('refuses %o', (wrong, message) =>
    expect(() => poissonChange({ ...band, ...wrong })).toThrow(message),
  );
});
