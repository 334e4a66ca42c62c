import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stressFromTorque } from '../../../src/core/screw/tensioner.ts';
import { settingForStress } from '../../../src/core/wheel/same-band.ts';

const known = { dragLoad: 0.8, topLoad: 14.5, topStress: 106.8e6 };

describe('settingForStress', () => {
  it('is in proportion above the drag: 110 MPa after 106.8 MPa at 14.5 N·m is 14.91 N·m, derived here', () =>
    expect(settingForStress(known, 110e6)).toBeCloseTo(14.9105, 4));
  it('is the known load for the known stress, and the drag for none', () => {
    expect(settingForStress(known, 106.8e6)).toBeCloseTo(14.5, 12);
    expect(settingForStress(known, 0)).toBe(0.8);
  });
  it('needs neither section nor efficiency: any mill gives its own stress back', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        fc.double({ min: 1e-5, max: 2e-4, noNaN: true }),
        fc.double({ min: 1e7, max: 3e8, noNaN: true }),
        (efficiency, area, target) => {
          const mill = { lead: 0.004, efficiency, dragTorque: 0.8 };
          const topStress = stressFromTorque(mill, { area }, 14.5);
          const setting = settingForStress({ ...known, topStress }, target);
          expect(stressFromTorque(mill, { area }, setting) / target).toBeCloseTo(1, 9);
        },
      ),
    ));
  it.each([
    [{ dragLoad: -1 }, 1, /dragLoad must be at least 0/],
    [{ topLoad: 0.8 }, 1, /dragLoad must be below 0.8 \(was 0.8\)/],
    [{ topLoad: Number.POSITIVE_INFINITY }, 1, /topLoad must be a finite number/],
    [{ topStress: 0 }, 1, /topStress must be above 0 Pa/],
    [{}, -1, /targetStress must be at least 0 Pa/],
  ])('refuses %o for %s Pa', (wrong, target, message) =>
    expect(() => settingForStress({ ...known, ...wrong }, target)).toThrow(message),
  );
});
