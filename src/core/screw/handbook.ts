/**
 * The screw as handbooks print it, with μ·sec α in place of μ/cos αₙ: for teaching, and to compare.
 * Units: SI only (m, rad, N, N·m).
 * Source: `shigley` 8-2; checked against `bhandari` examples 6.2 and 6.6.
 * It reads the friction part high by sin²α·tan²λ/2: under 0.02 % of the torque on a mill's screw.
 */
import { assertAtLeast } from '../assert.ts';
import { collarTorque } from './collar.ts';
import type { ThreadShape } from './shape.ts';
import { flankHalfAngle, leadSlope, loweringFactor, raisingFactor } from './shape.ts';
import type { RubbingThread, Screw } from './torque.ts';
import { screwEfficiency } from './torque.ts';

function handbookFriction(thread: RubbingThread): number {
  assertAtLeast('threadFriction', thread.threadFriction, 0);
  return thread.threadFriction / Math.cos(flankHalfAngle(thread));
}

/**
 * Torque to tighten, Q·(d₂/2)·(tan λ + μ·sec α)/(1 − μ·sec α·tan λ) + Q·μc·dc/2 in N·m.
 * @throws RangeError for an impossible screw, a thrust below 0, or friction that jams the screw
 */
export function raisingTorqueHandbook(screw: Screw, thrust: number): number {
  const factor = raisingFactor(leadSlope(screw), handbookFriction(screw));
  return collarTorque(screw, thrust) + ((thrust * screw.meanDiameter) / 2) * factor;
}

/**
 * Torque to loosen, Q·(d₂/2)·(μ·sec α − tan λ)/(1 + μ·sec α·tan λ) + Q·μc·dc/2 in N·m.
 * @throws RangeError for an impossible screw or a thrust below 0
 */
export function loweringTorqueHandbook(screw: Screw, thrust: number): number {
  const factor = loweringFactor(leadSlope(screw), handbookFriction(screw));
  return collarTorque(screw, thrust) + ((thrust * screw.meanDiameter) / 2) * factor;
}

/**
 * Efficiency while tightening, e = Q·l/(2π·M), above 0, at most 1.
 * @throws RangeError as `raisingTorqueHandbook`
 */
export function efficiencyHandbook(screw: Screw): number {
  return screwEfficiency({ thrust: 1, lead: screw.lead, torque: raisingTorqueHandbook(screw, 1) });
}

/**
 * Thread friction at which the thread alone just holds, tan λ·cos α.
 * @throws RangeError for an impossible shape
 */
export function selfLockingFrictionHandbook(shape: ThreadShape): number {
  return leadSlope(shape) * Math.cos(flankHalfAngle(shape));
}
