import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  efficiencyFromSlope,
  stressFromTorque,
  torqueForStress,
  torqueForWheelForce,
  wheelForceFromTorque,
} from '../../../src/core/screw/tensioner.ts';
import { efficiency, raisingTorque } from '../../../src/core/screw/torque.ts';
import { evenly } from '../../evenly.ts';

const tensioner = { lead: 0.004, efficiency: 0.3, dragTorque: 0.8 };
const band = { area: 29e-6 };
const anyTensioner = fc.record({
  lead: fc.double({ min: 0.001, max: 0.012, noNaN: true }),
  efficiency: fc.double({ min: 0.05, max: 1, noNaN: true }),
  dragTorque: evenly(0, 5),
  advantage: fc.double({ min: 0.5, max: 4, noNaN: true }),
});
const anyBand = fc.record({
  area: fc.double({ min: 5e-6, max: 2e-4, noNaN: true }),
  strandHalfAngle: evenly(0, 0.2),
});
const anyStress = fc.double({ min: 1e6, max: 3e8, noNaN: true });

describe('torqueForWheelForce', () => {
  it('is the screw of Bhandari, Design of Machine Elements, Example 6.1, with drag added', () => {
    const screw = {
      meanDiameter: 0.046,
      lead: 0.024,
      halfAngle: 0,
      threadFriction: 0.15,
      collarFriction: 0.15,
      collarDiameter: 0.0825,
    };
    const press = { lead: screw.lead, efficiency: efficiency(screw), dragTorque: 2 };
    expect(torqueForWheelForce(press, 15_000)).toBeCloseTo(206.644140833, 8);
    expect(torqueForWheelForce(press, 15_000) - 2).toBeCloseTo(raisingTorque(screw, 15_000), 9);
  });
  it('is the drag alone with the band slack', () =>
    expect(torqueForWheelForce(tensioner, 0)).toBe(0.8));
  it('is halved above drag by a 2:1 lever', () =>
    expect(torqueForWheelForce({ ...tensioner, advantage: 2 }, 6000) - 0.8).toBeCloseTo(
      (torqueForWheelForce(tensioner, 6000) - 0.8) / 2,
      12,
    ));
  it('refuses a push', () =>
    expect(() => torqueForWheelForce(tensioner, -1)).toThrow(/wheelForce must be at least 0 N/));
});

describe('wheelForceFromTorque', () => {
  it('undoes torqueForWheelForce', () =>
    fc.assert(
      fc.property(anyTensioner, fc.double({ min: 100, max: 3e4, noNaN: true }), (any, force) => {
        expect(wheelForceFromTorque(any, torqueForWheelForce(any, force)) / force).toBeCloseTo(
          1,
          9,
        );
      }),
    ));
  it('is nothing up to the drag torque', () => {
    expect(wheelForceFromTorque(tensioner, 0.5)).toBe(0);
    expect(wheelForceFromTorque(tensioner, 0.8)).toBe(0);
  });
});

describe('torqueForStress and stressFromTorque', () => {
  it('ask 14.339 N·m for 110 MPa in 29 mm² at an efficiency of 0.3: derived here', () =>
    expect(torqueForStress(tensioner, band, 110e6)).toBeCloseTo(14.338780492350564, 11));
  it('follow σ = adv·π·e·(M − M_d)/(l·A·cos β)', () => {
    const lever = { ...tensioner, advantage: 2 };
    const leaning = { ...band, strandHalfAngle: 0.05 };
    expect(stressFromTorque(lever, leaning, 10.8)).toBeCloseTo(
      (2 * Math.PI * 0.3 * 10) / (0.004 * 29e-6 * Math.cos(0.05)),
      4,
    );
  });
  it('undo each other', () =>
    fc.assert(
      fc.property(anyTensioner, anyBand, anyStress, (mill, any, stress) => {
        expect(
          stressFromTorque(mill, any, torqueForStress(mill, any, stress)) / stress,
        ).toBeCloseTo(1, 8);
      }),
    ));
  it('refuse a push, no steel and a torque below none', () => {
    expect(() => torqueForStress(tensioner, band, -1)).toThrow(/stress must be at least 0 Pa/);
    expect(() => torqueForStress(tensioner, { area: 0 }, 1e8)).toThrow(/area must be above 0 m²/);
    expect(() => stressFromTorque(tensioner, { area: 0 }, 1)).toThrow(/area must be above 0 m²/);
    expect(() => stressFromTorque(tensioner, band, -1)).toThrow(/torque must be at least 0 N·m/);
  });
});

describe('efficiencyFromSlope', () => {
  it('is slope·l·A·cos β/(π·adv): 7.8 MPa per N·m give 0.288, derived here', () =>
    expect(efficiencyFromSlope({ ...band, lead: 0.004, slope: 7.8e6 })).toBeCloseTo(
      0.2880067850190938,
      12,
    ));
  it('finds the efficiency that made the slope', () =>
    fc.assert(
      fc.property(anyTensioner, anyBand, (mill, any) => {
        const above = stressFromTorque(mill, any, mill.dragTorque + 2);
        const { lead, advantage } = mill;
        const found = efficiencyFromSlope({ ...any, lead, advantage, slope: above / 2 });
        expect(found / mill.efficiency).toBeCloseTo(1, 9);
      }),
    ));
  it('refuses a stress that does not rise with torque', () =>
    expect(() => efficiencyFromSlope({ ...band, lead: 0.004, slope: 0 })).toThrow(
      /slope must be above 0 Pa\/\(N·m\)/,
    ));
});

describe('a tensioner', () => {
  it.each([
    [{ lead: 0 }, /lead must be above 0 m/],
    [{ efficiency: 0 }, /efficiency must be above 0/],
    [{ dragTorque: -0.1 }, /dragTorque must be at least 0 N·m/],
    [{ advantage: Number.NaN }, /advantage must be above 0/],
  ])('is refused if %o', (wrong, message) => {
    expect(() => torqueForWheelForce({ ...tensioner, ...wrong }, 1)).toThrow(message);
    expect(() => wheelForceFromTorque({ ...tensioner, ...wrong }, 1)).toThrow(message);
  });
});
