/**
 * A power screw under load, in the exact form with the flank angle square to the thread.
 * Units: SI only (m, rad, N, N·m). All torques are above the drag of the empty screw.
 * Source: inclined plane, derived here; checked against `bhandari` 6.1, `beer-johnston` 8.5,
 * `shigley` 8-1.
 */
import { assertAtLeast, assertPositive } from '../assert.ts';
import type { Collar } from './collar.ts';
import { collarTorque } from './collar.ts';
import type { ThreadShape } from './shape.ts';
import { flankFactor, leadSlope, loweringFactor, raisingFactor } from './shape.ts';

/** Thread and collar together; every friction is 0 or more, every size in m. */
export interface Screw extends ThreadShape, Collar {
  readonly meanDiameter: number; // m, > 0, the pitch diameter
  readonly lead: number; // m, > 0, starts × pitch
  readonly halfAngle: number; // rad, half of the thread angle
  readonly threadFriction: number;
  readonly collarFriction: number;
  readonly collarDiameter: number; // m, mean diameter of the collar
}

/** A thread with its friction, collar left out. */
export type RubbingThread = Omit<Screw, keyof Collar>;

/**
 * Friction as the slope feels it, μ′ = μ/cos αₙ, no unit, at least μ.
 * @throws RangeError unless the shape is possible and threadFriction is at least 0
 */
export function effectiveFriction(thread: RubbingThread): number {
  assertAtLeast('threadFriction', thread.threadFriction, 0);
  return thread.threadFriction * flankFactor(thread);
}

/** Torque of the thread alone in N·m, with the factor of the way that it is turned. */
function threadTorque(thread: RubbingThread, thrust: number, factor: typeof raisingFactor): number {
  assertAtLeast('thrust', thrust, 0, 'N');
  return (
    ((thrust * thread.meanDiameter) / 2) * factor(leadSlope(thread), effectiveFriction(thread))
  );
}

/**
 * Torque of the thread alone while tightening, Q·(d₂/2)·(tan λ + μ′)/(1 − μ′·tan λ) in N·m.
 * @throws RangeError for an impossible shape, a thrust below 0, or friction that jams the screw
 */
export function threadRaisingTorque(thread: RubbingThread, thrust: number): number {
  return threadTorque(thread, thrust, raisingFactor);
}

/**
 * Torque of the thread alone while loosening, Q·(d₂/2)·(μ′ − tan λ)/(1 + μ′·tan λ) in N·m.
 * @throws RangeError for an impossible shape or a thrust below 0
 */
export function threadLoweringTorque(thread: RubbingThread, thrust: number): number {
  return threadTorque(thread, thrust, loweringFactor);
}

/**
 * Torque to tighten, thread and collar, in N·m, 0 or more.
 * @throws RangeError as `threadRaisingTorque`
 */
export function raisingTorque(screw: Screw, thrust: number): number {
  return threadRaisingTorque(screw, thrust) + collarTorque(screw, thrust);
}

/**
 * Torque to loosen, thread and collar, in N·m; negative: the load turns the screw.
 * @throws RangeError as `threadLoweringTorque`
 */
export function loweringTorque(screw: Screw, thrust: number): number {
  return threadLoweringTorque(screw, thrust) + collarTorque(screw, thrust);
}

/**
 * Thrust that a tightening torque above drag holds, in N, 0 or more.
 * @throws RangeError unless torque ≥ 0 N·m
 */
export function thrustFromTorque(screw: Screw, torque: number): number {
  assertAtLeast('torque', torque, 0, 'N·m');
  return torque / raisingTorque(screw, 1);
}

/**
 * Efficiency while tightening, e = Q·l/(2π·M), above 0, at most 1.
 * @throws RangeError as `raisingTorque`
 */
export function efficiency(screw: Screw): number {
  return screwEfficiency({ thrust: 1, lead: screw.lead, torque: raisingTorque(screw, 1) });
}

/**
 * Efficiency of a measured pair of thrust and torque, Q·l/(2π·M), no unit.
 * @throws RangeError unless all are above 0
 */
export function screwEfficiency(pair: { thrust: number; lead: number; torque: number }): number {
  assertPositive('thrust', pair.thrust, 'N');
  assertPositive('lead', pair.lead, 'm');
  assertPositive('torque', pair.torque, 'N·m');
  return (pair.thrust * pair.lead) / (2 * Math.PI * pair.torque);
}

/**
 * Thread friction at which the thread alone just holds, tan λ·cos αₙ, no unit.
 * @throws RangeError for an impossible shape
 */
export function selfLockingFriction(shape: ThreadShape): number {
  return leadSlope(shape) / flankFactor(shape);
}

/**
 * Whether the thread alone, without its collar, holds the load.
 * @throws RangeError unless threadFriction ≥ 0
 */
export function isSelfLocking(thread: RubbingThread): boolean {
  assertAtLeast('threadFriction', thread.threadFriction, 0);
  return thread.threadFriction >= selfLockingFriction(thread);
}
