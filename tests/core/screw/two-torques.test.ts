import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { efficiency, loweringTorque, raisingTorque } from '../../../src/core/screw/torque.ts';
import {
  efficiencyFromTwoTorques,
  frictionFromTwoTorques,
  thrustEstimateFromTwoTorques,
  thrustFromTwoTorques,
} from '../../../src/core/screw/two-torques.ts';
import { evenly } from '../../evenly.ts';

const degree = Math.PI / 180;
const anyScrew = fc.record({
  meanDiameter: fc.double({ min: 0.012, max: 0.04, noNaN: true }),
  lead: fc.double({ min: 0.001, max: 0.005, noNaN: true }),
  halfAngle: evenly(0, 30 * degree),
  threadFriction: evenly(0, 0.3),
  collarFriction: evenly(0, 0.15),
  collarDiameter: evenly(0, 0.05),
});
const acme = {
  meanDiameter: 0.02286,
  lead: 0.00508,
  halfAngle: 14.5 * degree,
  threadFriction: 0.14,
  collarFriction: 0,
  collarDiameter: 0,
};
const torques = { tighteningTorque: 19.89221128662, looseningTorque: 6.684294568922 };

describe('frictionFromTwoTorques', () => {
  it('matches Beer and Johnston, Statics, Sample Problem 8.5: 40 and 14.97 N·m came from 0.30', () => {
    const clamp = { meanDiameter: 0.01, lead: 0.004, halfAngle: 0 };
    const couples = { tighteningTorque: 40, looseningTorque: 14.97 };
    expect(frictionFromTwoTorques(couples, clamp)).toBeCloseTo(0.3, 3);
  });
  it('without a collar solves sin 2φ = sin 2λ·(M_up + M_down)/(M_up − M_down)', () => {
    const clamp = { meanDiameter: 0.01, lead: 0.004, halfAngle: 0 };
    const rub = Math.atan(
      frictionFromTwoTorques({ tighteningTorque: 40, looseningTorque: 14.97 }, clamp),
    );
    const lead = Math.atan(0.004 / (Math.PI * 0.01));
    expect(Math.sin(2 * rub)).toBeCloseTo((Math.sin(2 * lead) * 54.97) / 25.03, 12);
  });
  it('finds the friction that made the torques, whatever the known collar of a mill', () =>
    fc.assert(
      fc.property(anyScrew, (screw) => {
        const made = {
          tighteningTorque: raisingTorque(screw, 5000),
          looseningTorque: loweringTorque(screw, 5000),
        };
        expect(frictionFromTwoTorques(made, screw, screw)).toBeCloseTo(screw.threadFriction, 9);
      }),
    ));
  it('finds it under a collar that eats most of the torque: 0.3 m at 0.15, derived here', () => {
    const screw = { ...acme, threadFriction: 0.12, collarFriction: 0.15, collarDiameter: 0.3 };
    const made = {
      tighteningTorque: raisingTorque(screw, 5000),
      looseningTorque: loweringTorque(screw, 5000),
    };
    expect(frictionFromTwoTorques(made, screw, screw) / 0.12).toBeCloseTo(1, 12);
  });
  it('refuses torques that the collar alone exceeds, and torques too near each other', () => {
    const hungry = { collarFriction: 0.5, collarDiameter: 0.05 };
    expect(() => frictionFromTwoTorques(torques, acme, hungry)).toThrow(
      /looseningTorque must be what this screw and collar can give N·m \(was 6.68/,
    );
    const alike = { tighteningTorque: 20, looseningTorque: 19.9 };
    expect(() => frictionFromTwoTorques(alike, acme)).toThrow(/looseningTorque must be what/);
  });
  it('refuses a collar below none', () => {
    const none = { collarFriction: 0, collarDiameter: 0 };
    expect(() => frictionFromTwoTorques(torques, acme, { ...none, collarFriction: -1 })).toThrow(
      /collarFriction must be at least 0/,
    );
    expect(() => frictionFromTwoTorques(torques, acme, { ...none, collarDiameter: -1 })).toThrow(
      /collarDiameter must be at least 0 m/,
    );
  });
});

describe('thrustFromTwoTorques', () => {
  it('returns the 8000 N that made the torques: derived here', () =>
    expect(thrustFromTwoTorques(torques, acme)).toBeCloseTo(8000, 6));
  it('does not feel the collar', () =>
    fc.assert(
      fc.property(anyScrew, (screw) => {
        const made = {
          tighteningTorque: raisingTorque(screw, 5000),
          looseningTorque: loweringTorque(screw, 5000),
        };
        expect(thrustFromTwoTorques(made, screw) / 5000).toBeCloseTo(1, 9);
      }),
    ));
  it('refuses a friction that would jam the screw', () =>
    expect(() => thrustFromTwoTorques(torques, { ...acme, threadFriction: 20 })).toThrow(
      /effectiveFriction must be below 14.1/,
    ));
});

describe('thrustEstimateFromTwoTorques', () => {
  it('reads 2.1 % high on this screw: 8168 N, derived here', () =>
    expect(thrustEstimateFromTwoTorques(torques, acme.lead)).toBeCloseTo(8168.0894, 3));
  it('is right for a frictionless screw', () => {
    const smooth = { tighteningTorque: 10, looseningTorque: -10 };
    expect(thrustEstimateFromTwoTorques(smooth, 0.004)).toBeCloseTo((20 * Math.PI) / 0.004, 8);
  });
  it('refuses a lead of nothing', () =>
    expect(() => thrustEstimateFromTwoTorques(torques, 0)).toThrow(/lead must be above 0 m/));
});

describe('efficiencyFromTwoTorques', () => {
  it('is half of the difference over the tightening torque: 0.33199, derived here', () =>
    expect(efficiencyFromTwoTorques(torques)).toBeCloseTo(0.331987141283, 10));
  it('is a little above the efficiency itself', () =>
    fc.assert(
      fc.property(anyScrew, (screw) => {
        const made = {
          tighteningTorque: raisingTorque(screw, 5000),
          looseningTorque: loweringTorque(screw, 5000),
        };
        expect(efficiencyFromTwoTorques(made)).toBeGreaterThanOrEqual(
          efficiency(screw) * (1 - 1e-9),
        );
      }),
    ));
});

describe('a pair of torques', () => {
  it.each([
    [{ tighteningTorque: 0, looseningTorque: -1 }, /tighteningTorque must be above 0 N·m/],
    [
      { tighteningTorque: 5, looseningTorque: Number.NaN },
      /looseningTorque must be a finite number/,
    ],
    [{ tighteningTorque: 5, looseningTorque: 5 }, /looseningTorque must be below 5 N·m \(was 5\)/],
    [
      { tighteningTorque: 5, looseningTorque: 0, selfLocking: true },
      /looseningTorque must be above 0 N·m/,
    ],
  ])('is refused if %o', (wrong, message) => {
    expect(() => efficiencyFromTwoTorques(wrong)).toThrow(message);
    expect(() => frictionFromTwoTorques(wrong, acme)).toThrow(message);
    expect(() => thrustEstimateFromTwoTorques(wrong, 0.004)).toThrow(message);
  });
  it('may let the load turn the screw, unless the screw was seen to hold', () => {
    const overhauling = { tighteningTorque: 5, looseningTorque: -1, selfLocking: false };
    expect(efficiencyFromTwoTorques(overhauling)).toBeCloseTo(0.6, 12);
  });
});
