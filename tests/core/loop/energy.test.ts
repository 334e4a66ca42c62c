import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  coilEnergy,
  coilRadius,
  kineticEnergy,
  recoilSpeed,
  stretchEnergy,
  supportEnergy,
} from '../../../src/core/loop/energy.ts';
import { evenly } from '../../evenly.ts';

const band = { stress: 120e6, youngsModulus: 200e9, area: 30e-6, loopLength: 4 };
const coil = { youngsModulus: 200e9, thickness: 0.001, radius: 0.2, area: 35e-6, loopLength: 4 };
const running = { massPerLength: 0.25, loopLength: 4, speed: 20 };
const broken = { stress: 120e6, youngsModulus: 200e9, density: 7850 };

describe('stretchEnergy', () => {
  it('is 4.32 J, by hand: 36 kJ/m³ in 120 cm³', () =>
    expect(stretchEnergy(band)).toBeCloseTo(4.32, 12));

  // Half of force times stretch: 3600 N over 2.4 mm.
  it('is half of the strand force times the stretch of the loop', () =>
    fc.assert(
      fc.property(evenly(0, 300e6), (stress) => {
        const work = (stress * 30e-6 * ((stress * 4) / 200e9)) / 2;
        expect(stretchEnergy({ ...band, stress })).toBeCloseTo(work, 9);
      }),
    ));

  it.each(['youngsModulus', 'area', 'loopLength'])('refuses %s of 0', (name) =>
    expect(() => stretchEnergy({ ...band, [name]: 0 })).toThrow(`${name} must be above 0`),
  );

  it('refuses a pushed band', () =>
    expect(() => stretchEnergy({ ...band, stress: -1 })).toThrow('stress must be at least 0 Pa'));
});

describe('supportEnergy', () => {
  it('is 3.6 J in a frame of 5 MN/m at 6 kN, by hand, and 72 J in a spring', () => {
    expect(supportEnergy(6000, 5e6)).toBeCloseTo(3.6, 12);
    expect(supportEnergy(6000, 0.25e6)).toBeCloseTo(72, 12);
    expect(supportEnergy(0, 5e6)).toBe(0);
  });

  it('refuses what cannot be', () => {
    expect(() => supportEnergy(-1, 1)).toThrow('wheelForce must be at least 0 N');
    expect(() => supportEnergy(1, 0)).toThrow('stiffness must be above 0 N/m');
  });
});

describe('coilRadius and coilEnergy', () => {
  it('are 0.2122 m for 4 m in three rings, and 29.2 J at 0.2 m, by hand', () => {
    expect(coilRadius(4)).toBeCloseTo(4 / (6 * Math.PI), 12);
    expect(coilRadius(4, 1)).toBeCloseTo(4 / (2 * Math.PI), 12);
    expect(coilEnergy(coil)).toBeCloseTo((200e9 * 1e-6 * 140e-6) / (24 * 0.04), 12);
  });

  // Work of bending, E·I·L/(2R²) with I = w·t³/12 and A = w·t.
  it('are the work of bending a beam', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 2, noNaN: true }), (radius) => {
        const bendingStiffness = (200e9 * 0.035 * 0.001 ** 3) / 12;
        const work = (bendingStiffness * 4) / (2 * radius ** 2);
        expect(coilEnergy({ ...coil, radius }) / work).toBeCloseTo(1, 12);
      }),
    ));

  it.each(['youngsModulus', 'thickness', 'radius', 'area', 'loopLength'])(
    'refuse %s of 0',
    (name) => expect(() => coilEnergy({ ...coil, [name]: 0 })).toThrow(`${name} must be above 0`),
  );

  it('refuse no band and no turns', () => {
    expect(() => coilRadius(0)).toThrow('loopLength must be above 0 m');
    expect(() => coilRadius(4, 0)).toThrow('turns must be above 0');
  });
});

describe('kineticEnergy', () => {
  it('is 200 J for 1 kg of band at 20 m/s, by hand', () => {
    expect(kineticEnergy(running)).toBe(200);
    expect(kineticEnergy({ ...running, speed: 0 })).toBe(0);
  });

  it('refuses what cannot be', () => {
    expect(() => kineticEnergy({ ...running, massPerLength: 0 })).toThrow('massPerLength must be');
    expect(() => kineticEnergy({ ...running, loopLength: 0 })).toThrow(
      'loopLength must be above 0 m',
    );
    expect(() => kineticEnergy({ ...running, speed: -1 })).toThrow('speed must be at least 0 m/s');
  });
});

describe('recoilSpeed', () => {
  it('is 3.03 m/s at 120 MPa, by hand: stress over the impedance √(E·ρ)', () =>
    expect(recoilSpeed(broken)).toBeCloseTo(120e6 / Math.sqrt(200e9 * 7850), 12));

  // A strip let go at one end has turned all its stretch into motion when the wave has passed.
  it('carries all of the stretch energy', () =>
    fc.assert(
      fc.property(evenly(0, 300e6), (stress) => {
        const speed = recoilSpeed({ ...broken, stress });
        const motion = kineticEnergy({ massPerLength: 7850 * 30e-6, loopLength: 4, speed });
        expect(motion).toBeCloseTo(stretchEnergy({ ...band, stress }), 9);
      }),
    ));

  it('refuses what cannot be', () => {
    expect(() => recoilSpeed({ ...broken, stress: -1 })).toThrow('stress must be at least 0 Pa');
    expect(() => recoilSpeed({ ...broken, youngsModulus: 0 })).toThrow(
      'youngsModulus must be above',
    );
    expect(() => recoilSpeed({ ...broken, density: 0 })).toThrow('density must be above 0 kg/m³');
  });
});
