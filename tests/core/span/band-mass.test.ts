import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  airMassPerLength,
  massPerLength,
  massRatio,
  weighedMassPerLength,
} from '../../../src/core/span/band-mass.ts';

const band = { density: 7850, widthOverTeeth: 0.035, bodyWidth: 0.029, thickness: 0.001 };

describe('massPerLength', () => {
  it('is 251.2 g/m for 29 mm of body with 6 mm of half-filled teeth, by hand', () =>
    expect(massPerLength(band)).toBeCloseTo(7850 * 0.001 * 0.032, 12));

  it('is that of the body alone without teeth, of the full width with solid ones', () => {
    expect(massPerLength({ ...band, toothFill: 0 })).toBeCloseTo(0.22765, 12);
    expect(massPerLength({ ...band, toothFill: 1 })).toBeCloseTo(0.27475, 12);
  });

  it('grows in step with the thickness', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 10, noNaN: true }), (factor) => {
        const thicker = massPerLength({ ...band, thickness: 0.001 * factor });
        expect(thicker / massPerLength(band)).toBeCloseTo(factor, 10);
      }),
    ));

  it.each(['density', 'widthOverTeeth', 'bodyWidth', 'thickness'])('refuses %s of 0', (name) =>
    expect(() => massPerLength({ ...band, [name]: 0 })).toThrow(`${name} must be above 0`),
  );

  it('refuses a body wider than the band, and a filling beyond solid', () => {
    expect(() => massPerLength({ ...band, bodyWidth: 0.036 })).toThrow(
      'at most 0.035 m (was 0.036)',
    );
    expect(() => massPerLength({ ...band, toothFill: 1.1 })).toThrow('toothFill must be between');
  });
});

describe('airMassPerLength', () => {
  it('is that of a cylinder of air as wide as the band: 1.155 g/m for 35 mm', () =>
    expect(airMassPerLength(0.035)).toBeCloseTo(1.2 * Math.PI * 0.0175 ** 2, 15));

  it('follows the density of the air', () =>
    expect(airMassPerLength(0.035, 0.6)).toBeCloseTo(airMassPerLength(0.035) / 2, 15));

  it('refuses no width and no air', () => {
    expect(() => airMassPerLength(0)).toThrow('width must be above 0 m');
    expect(() => airMassPerLength(1, 0)).toThrow('airDensity must be above 0 kg/m³');
  });
});

describe('weighedMassPerLength and massRatio', () => {
  it('are 0.25 kg/m for 1 kg on 4 m, and 1.1 for a tenth of it in the teeth', () => {
    expect(weighedMassPerLength(1, 4)).toBe(0.25);
    expect(massRatio(0.2533685, 7850, 29.342e-6)).toBeCloseTo(1.1, 4);
  });

  it('give back 1 for a plain strip of any size', () =>
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e-3, noNaN: true }), (area) => {
        expect(massRatio(7850 * area, 7850, area)).toBeCloseTo(1, 12);
      }),
    ));

  it('refuse what cannot be', () => {
    expect(() => weighedMassPerLength(0, 1)).toThrow('mass must be above 0 kg');
    expect(() => weighedMassPerLength(1, 0)).toThrow('length must be above 0 m');
    expect(() => massRatio(0, 1, 1)).toThrow('massPerLength must be above 0 kg/m');
    expect(() => massRatio(1, 0, 1)).toThrow('density must be above 0 kg/m³');
    expect(() => massRatio(1, 1, 0)).toThrow('area must be above 0 m²');
  });
});
