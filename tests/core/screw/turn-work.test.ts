import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { efficiency, raisingTorque } from '../../../src/core/screw/torque.ts';
import {
  collarHeat,
  threadHeat,
  thrustWork,
  torqueWork,
} from '../../../src/core/screw/turn-work.ts';
import { evenly } from '../../evenly.ts';

/** The square screw of Bhandari, Design of Machine Elements, example 6.1, with a collar. */
const screw = {
  meanDiameter: 0.046,
  lead: 0.024,
  halfAngle: 0,
  threadFriction: 0.15,
  collarFriction: 0.15,
  collarDiameter: 0.0825,
};
const thrusts = fc.double({ min: 1, max: 20_000, noNaN: true });
const turnCounts = fc.double({ min: 0.01, max: 10, noNaN: true });

describe('torqueWork', () => {
  it('is 2π J for one turn at a steady 1 N·m', () =>
    expect(torqueWork({ startTorque: 1, endTorque: 1, turns: 1 })).toBeCloseTo(2 * Math.PI, 14));

  it('takes the mean of a torque that rises: half a turn from 2 to 10 N·m is 6π J', () =>
    expect(torqueWork({ startTorque: 2, endTorque: 10, turns: 0.5 })).toBeCloseTo(6 * Math.PI, 13));

  it('is the same in one go and in two, whatever the place between', () =>
    fc.assert(
      fc.property(turnCounts, evenly(0, 1), (turns, share) => {
        const middle = 2 + 8 * share;
        const first = torqueWork({ startTorque: 2, endTorque: middle, turns: turns * share });
        const rest = torqueWork({ startTorque: middle, endTorque: 10, turns: turns * (1 - share) });
        expect(first + rest).toBeCloseTo(torqueWork({ startTorque: 2, endTorque: 10, turns }), 9);
      }),
    ));

  it.each(['startTorque', 'endTorque', 'turns'])('refuses %s below 0', (name) =>
    expect(() => torqueWork({ startTorque: 1, endTorque: 1, turns: 1, [name]: -1 })).toThrow(
      `${name} must be at least 0`,
    ),
  );
});

describe('thrustWork', () => {
  it('is half of force times way: 10 kN over two turns of 5 mm is 50 J', () =>
    expect(thrustWork({ thrust: 10_000, lead: 0.005, turns: 2 })).toBeCloseTo(50, 12));

  it.each(['thrust', 'lead', 'turns'])('refuses %s below 0', (name) =>
    expect(() => thrustWork({ thrust: 1, lead: 1, turns: 1, [name]: -1 })).toThrow(
      `${name} must be at least 0`,
    ),
  );
});

describe('threadHeat and collarHeat', () => {
  it('are nothing without friction', () => {
    const smooth = { ...screw, threadFriction: 0, collarFriction: 0 };
    expect(threadHeat(smooth, 10_000, 2)).toBeCloseTo(0, 9);
    expect(collarHeat(smooth, 10_000, 2)).toBe(0);
  });

  it('are together what the efficiency leaves of the work, 1 − e', () =>
    fc.assert(
      fc.property(thrusts, turnCounts, (thrust, turns) => {
        const endTorque = raisingTorque(screw, thrust);
        const work = torqueWork({ startTorque: 0, endTorque, turns });
        const heat = threadHeat(screw, thrust, turns) + collarHeat(screw, thrust, turns);
        expect(heat / work).toBeCloseTo(1 - efficiency(screw), 12);
      }),
    ));

  it('refuse turns below 0', () => {
    expect(() => threadHeat(screw, 1, -1)).toThrow('turns must be at least 0');
    expect(() => collarHeat(screw, 1, -1)).toThrow('turns must be at least 0');
  });
});
