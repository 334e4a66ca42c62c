import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bendingStress, centrifugalStress } from '../../src/core/wheel.ts';

const bend = { youngsModulus: 205e9, thickness: 0.0011, wheelDiameter: 0.48 };

describe('bendingStress', () => {
  it('matches the hand-worked case: 1.1 mm on 480 mm at 205 GPa is 205e9 × 1.1 / 481.1', () =>
    expect(bendingStress(bend)).toBeCloseTo(468717522.34, 1));

  // Shigley, ch. 17, flat metal belt: E·t/((1 − ν²)D) = 22 857 psi for 0.003 in steel on 4 in. The
  // book takes D for D + t and the factor of a wide plate; units cancel.
  it('agrees with the printed metal belt once its plate factor is put in', () => {
    const printed = bendingStress({ youngsModulus: 28e6, thickness: 0.003, wheelDiameter: 4 });
    expect((printed / (1 - 0.285 ** 2)) * (4.003 / 4)).toBeCloseTo(22856.521, 2);
  });

  it('is E·t/D for a thin strip', () => {
    const thin = { ...bend, thickness: 1e-9 };
    expect(bendingStress(thin) / ((205e9 * 1e-9) / 0.48)).toBeCloseTo(1, 8);
  });

  it('depends on the ratio t/D only', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 10, noNaN: true }), (scale) => {
        const scaled = { ...bend, thickness: 0.0011 * scale, wheelDiameter: 0.48 * scale };
        expect(bendingStress(scaled) / bendingStress(bend)).toBeCloseTo(1, 12);
      }),
    ));

  it.each(['youngsModulus', 'thickness', 'wheelDiameter'])('refuses %s of 0', (name) =>
    expect(() => bendingStress({ ...bend, [name]: 0 })).toThrow(`${name} must be above 0`),
  );
});

describe('centrifugalStress', () => {
  it('is 4.90625 MPa for steel at 25 m/s, by hand', () =>
    expect(centrifugalStress({ density: 7850, speed: 25 })).toBe(4906250));

  it('is nil at rest', () => expect(centrifugalStress({ density: 7850, speed: 0 })).toBe(0));

  it('goes as the square of speed', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 60, noNaN: true }), (speed) => {
        const twice = centrifugalStress({ density: 7850, speed: 2 * speed });
        expect(twice / centrifugalStress({ density: 7850, speed })).toBeCloseTo(4, 12);
      }),
    ));

  it('refuses no density and a negative speed', () => {
    expect(() => centrifugalStress({ density: 0, speed: 1 })).toThrow(
      'density must be above 0 kg/m³',
    );
    expect(() => centrifugalStress({ density: 1, speed: -1 })).toThrow(
      'speed must be at least 0 m/s',
    );
  });
});
