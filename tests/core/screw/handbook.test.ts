import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  efficiencyHandbook,
  loweringTorqueHandbook,
  raisingTorqueHandbook,
  selfLockingFrictionHandbook,
} from '../../../src/core/screw/handbook.ts';
import {
  efficiency,
  loweringTorque,
  raisingTorque,
  selfLockingFriction,
} from '../../../src/core/screw/torque.ts';
import { evenly } from '../../evenly.ts';

const degree = Math.PI / 180;
const trapezoidal = {
  meanDiameter: 0.094,
  lead: 0.024,
  halfAngle: 15 * degree,
  threadFriction: 0.15,
  collarFriction: 0,
  collarDiameter: 0,
};
const millScrew = fc.record({
  meanDiameter: fc.double({ min: 0.012, max: 0.04, noNaN: true }),
  lead: fc.double({ min: 0.0015, max: 0.005, noNaN: true }),
  halfAngle: evenly(0, 30 * degree),
  threadFriction: fc.double({ min: 0.05, max: 0.25, noNaN: true }),
  collarFriction: fc.constant(0.1),
  collarDiameter: fc.constant(0.03),
});

describe('the handbook form', () => {
  it('matches Bhandari, Design of Machine Elements, Example 6.2: 3378.16 and 1030.69 N·m', () => {
    expect(raisingTorqueHandbook(trapezoidal, 300e3)).toBeCloseTo(3378.159205, 5);
    expect(loweringTorqueHandbook(trapezoidal, 300e3)).toBeCloseTo(1030.68563, 5);
    expect(efficiencyHandbook(trapezoidal)).toBeCloseTo(0.33921302, 8);
  });
  it('matches Bhandari, Example 6.6, with a collar: 12.937 %', () => {
    const leadScrew = { ...trapezoidal, meanDiameter: 0.048, lead: 0.008 };
    const withCollar = { ...leadScrew, collarFriction: 0.12, collarDiameter: 0.08 };
    expect(efficiencyHandbook(withCollar)).toBeCloseTo(0.12937099, 7);
  });
  it('is the exact form for a square thread', () => {
    const square = { ...trapezoidal, halfAngle: 0 };
    expect(raisingTorqueHandbook(square, 1000)).toBeCloseTo(raisingTorque(square, 1000), 12);
    expect(loweringTorqueHandbook(square, 1000)).toBeCloseTo(loweringTorque(square, 1000), 12);
  });
  it('reads at most a little high on a screw of a mill', () =>
    fc.assert(
      fc.property(millScrew, (screw) => {
        const excess = raisingTorqueHandbook(screw, 1) / raisingTorque(screw, 1) - 1;
        expect(excess).toBeGreaterThan(-1e-12);
        expect(excess).toBeLessThan(3e-3);
        expect(efficiencyHandbook(screw)).toBeLessThan(efficiency(screw) * (1 + 1e-12));
        expect(selfLockingFrictionHandbook(screw)).toBeLessThanOrEqual(selfLockingFriction(screw));
      }),
    ));
  it('differs by sin²α·tan²λ/2 of the friction part, to first order', () => {
    const bare = { ...trapezoidal, meanDiameter: 0.018, lead: 0.004 };
    const slope = 0.004 / (Math.PI * 0.018);
    const friction = 0.15 / Math.cos(15 * degree);
    const predicted = (Math.sin(15 * degree) * slope) ** 2 / 2;
    const change = raisingTorqueHandbook(bare, 1) - raisingTorque(bare, 1);
    const sensitivity = (0.009 * (1 + slope ** 2)) / (1 - friction * slope) ** 2;
    expect(change / (sensitivity * friction * predicted)).toBeCloseTo(1, 2);
  });
  it('refuses a friction below none, one that jams, and a thrust below none', () => {
    expect(() => raisingTorqueHandbook({ ...trapezoidal, threadFriction: -1 }, 1)).toThrow(
      /threadFriction must be at least 0/,
    );
    expect(() => raisingTorqueHandbook({ ...trapezoidal, threadFriction: 20 }, 1)).toThrow(
      /effectiveFriction must be below/,
    );
    expect(() => loweringTorqueHandbook(trapezoidal, -1)).toThrow(/thrust must be at least 0 N/);
    expect(() => selfLockingFrictionHandbook({ ...trapezoidal, halfAngle: -1 })).toThrow(
      /halfAngle must be at least 0 rad/,
    );
  });
});
