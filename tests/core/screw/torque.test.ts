import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  effectiveFriction,
  efficiency,
  isSelfLocking,
  loweringTorque,
  raisingTorque,
  screwEfficiency,
  selfLockingFriction,
  threadLoweringTorque,
  threadRaisingTorque,
  thrustFromTorque,
} from '../../../src/core/screw/torque.ts';
import { evenly } from '../../evenly.ts';

const degree = Math.PI / 180;
const square = {
  meanDiameter: 0.046,
  lead: 0.024,
  halfAngle: 0,
  threadFriction: 0.15,
  collarFriction: 0.15,
  collarDiameter: 0.0825,
};
const acme = {
  meanDiameter: 0.02286,
  lead: 0.00508,
  halfAngle: 14.5 * degree,
  threadFriction: 0.14,
  collarFriction: 0.004,
  collarDiameter: 0.035,
};
const anyScrew = fc.record({
  meanDiameter: fc.double({ min: 0.008, max: 0.06, noNaN: true }),
  lead: fc.double({ min: 0.001, max: 0.012, noNaN: true }),
  halfAngle: evenly(0, 30 * degree),
  threadFriction: evenly(0, 0.4),
  collarFriction: evenly(0, 0.4),
  collarDiameter: evenly(0, 0.08),
});
const anyThrust = fc.double({ min: 1, max: 1e5, noNaN: true });

describe('raisingTorque and loweringTorque', () => {
  it('match Bhandari, Design of Machine Elements, Example 6.1: 204.644 and 87.402 N·m', () => {
    expect(raisingTorque(square, 15_000)).toBeCloseTo(204.644140833, 8);
    expect(loweringTorque(square, 15_000)).toBeCloseTo(87.401514671, 8);
  });
  it('match Beer and Johnston, Statics, Sample Problem 8.5: 18.01 kN, 14.97 N·m', () => {
    const clamp = { ...square, meanDiameter: 0.01, lead: 0.004, threadFriction: 0.3 };
    const bare = { ...clamp, collarFriction: 0, collarDiameter: 0 };
    const thrust = thrustFromTorque(bare, 40);
    expect(thrust).toBeCloseTo(18_006, 0);
    expect(loweringTorque(bare, thrust)).toBeCloseTo(14.974, 3);
  });
  it('give an Acme screw on a ball bearing 20.452 and 7.244 N·m at 8 kN: derived here', () => {
    expect(raisingTorque(acme, 8000)).toBeCloseTo(20.45221128662, 9);
    expect(loweringTorque(acme, 8000)).toBeCloseTo(7.244294568922, 9);
  });
  it('are those of a frictionless screw where nothing rubs: Q·l/2π, both ways', () => {
    const smooth = { ...acme, threadFriction: 0, collarFriction: 0 };
    expect(raisingTorque(smooth, 1000)).toBeCloseTo((1000 * 0.00508) / (2 * Math.PI), 12);
    expect(loweringTorque(smooth, 1000)).toBeCloseTo((-1000 * 0.00508) / (2 * Math.PI), 12);
  });
  it('are thread and collar added', () => {
    const collar = (0.004 * 0.035 * 8000) / 2;
    expect(raisingTorque(acme, 8000) - threadRaisingTorque(acme, 8000)).toBeCloseTo(collar, 12);
    expect(loweringTorque(acme, 8000) - threadLoweringTorque(acme, 8000)).toBeCloseTo(collar, 12);
  });
  it('never ask more to loosen than to tighten', () =>
    fc.assert(
      fc.property(anyScrew, anyThrust, (screw, thrust) => {
        expect(loweringTorque(screw, thrust)).toBeLessThan(raisingTorque(screw, thrust));
      }),
    ));
});

describe('thrustFromTorque', () => {
  it('matches Jindal, Machine Design, Example 16-5: 23.6 kN', () => {
    const press = { ...square, meanDiameter: 0.021, lead: 0.016, threadFriction: 0.14 };
    const bare = { ...press, collarFriction: 0, collarDiameter: 0 };
    expect(thrustFromTorque(bare, 392.4 * 0.25)).toBeCloseTo(23_595, 0);
  });
  it('undoes raisingTorque', () =>
    fc.assert(
      fc.property(anyScrew, anyThrust, (screw, thrust) => {
        expect(thrustFromTorque(screw, raisingTorque(screw, thrust)) / thrust).toBeCloseTo(1, 12);
      }),
    ));
});

describe('efficiency', () => {
  it('matches Shigley, Example 8-1: 0.311', () => {
    const screw = { ...square, meanDiameter: 0.03, lead: 0.008, collarDiameter: 0.04 };
    expect(efficiency({ ...screw, threadFriction: 0.08, collarFriction: 0.08 })).toBeCloseTo(
      0.311,
      3,
    );
  });
  it('falls as friction grows and is 1 without any', () => {
    expect(efficiency({ ...acme, threadFriction: 0, collarFriction: 0 })).toBeCloseTo(1, 14);
    fc.assert(
      fc.property(anyScrew, (screw) => {
        const rougher = { ...screw, threadFriction: screw.threadFriction + 0.01 };
        expect(efficiency(rougher)).toBeLessThan(efficiency(screw));
      }),
    );
  });
  it('of a pair matches Bhandari, Example 6.2: 0.33921', () =>
    expect(screwEfficiency({ thrust: 300e3, lead: 0.024, torque: 3378.159205 })).toBeCloseTo(
      0.33921302,
      7,
    ));
});

describe('isSelfLocking', () => {
  it('turns at tan λ·cos αₙ: derived here, 0.10723 for a two-start Acme', () => {
    const twoStart = { ...acme, meanDiameter: 0.02921, lead: 0.01016 };
    const needed = selfLockingFriction(twoStart);
    expect(needed).toBeCloseTo(0.107230611198, 11);
    expect(isSelfLocking({ ...twoStart, threadFriction: needed })).toBe(true);
    expect(isSelfLocking({ ...twoStart, threadFriction: needed - 1e-9 })).toBe(false);
  });
  it('is where the thread alone needs no holding back', () =>
    fc.assert(
      fc.property(anyScrew, (screw) => {
        fc.pre(Math.abs(screw.threadFriction - selfLockingFriction(screw)) > 1e-9);
        expect(isSelfLocking(screw)).toBe(threadLoweringTorque(screw, 1) > 0);
      }),
    ));
});

describe('a screw', () => {
  it('feels more friction on leaning flanks', () => {
    expect(effectiveFriction({ ...acme, halfAngle: 0 })).toBe(0.14);
    expect(effectiveFriction(acme)).toBeCloseTo(0.144583475, 9);
  });
  it.each([
    [{ meanDiameter: 0 }, /meanDiameter must be above 0 m/],
    [{ lead: -1 }, /lead must be above 0 m/],
    [{ halfAngle: Number.NaN }, /halfAngle must be at least 0 rad/],
    [{ threadFriction: -0.1 }, /threadFriction must be at least 0/],
    [{ threadFriction: 20 }, /effectiveFriction must be below 14.1/],
    [{ collarFriction: Number.NaN }, /collarFriction must be at least 0/],
  ])('is refused if %o', (wrong, message) =>
    expect(() => raisingTorque({ ...acme, ...wrong }, 1000)).toThrow(message),
  );
  it('is refused a pull the other way', () => {
    expect(() => raisingTorque(acme, -1)).toThrow(/thrust must be at least 0 N/);
    expect(() => loweringTorque(acme, Number.NaN)).toThrow(/thrust must be at least 0 N/);
    expect(() => thrustFromTorque(acme, -1)).toThrow(/torque must be at least 0 N·m/);
    expect(() => isSelfLocking({ ...acme, threadFriction: -1 })).toThrow(/threadFriction must be/);
  });
  it.each(['thrust', 'lead', 'torque'])('has no efficiency without %s', (name) =>
    expect(() => screwEfficiency({ thrust: 1, lead: 1, torque: 1, [name]: 0 })).toThrow(
      new RegExp(`${name} must be above 0`),
    ),
  );
});
