/**
 * The parts of a screw as the lesson shows them: the unrolled ramp, the shares of the effort, the torques both ways.
 * Units: SI (m, rad, N, N·m); shares have no unit.
 * Source: core/screw, core/two-torques, derived there.
 */
import {
  collarTorque,
  effectiveFriction,
  efficiency,
  efficiencyFromTwoTorques,
  flankFactor,
  isSelfLocking,
  leadAngle,
  loweringTorque,
  raisingTorque,
  type Screw,
  screwEfficiency,
  selfLockingFriction,
  threadRaisingTorque,
  thrustEstimateFromTwoTorques,
} from '../../core/screw.ts';

/** One turn of the thread unrolled, and the pushes along its base as shares of the load. */
export function rampOf(screw: Screw) {
  const climb = leadAngle(screw);
  const friction = Math.atan(effectiveFriction(screw));
  return {
    round: Math.PI * screw.meanDiameter,
    leadAngle: climb,
    halfAngle: screw.halfAngle,
    wedging: flankFactor(screw),
    frictionAngle: friction,
    holdingFriction: selfLockingFriction(screw),
    holds: Number(isSelfLocking(screw)),
    pushUp: Math.tan(climb + friction),
    pushFree: Math.tan(climb),
    pushDown: Math.tan(friction - climb),
  };
}

/** What thread and collar keep of the work of a turn (with the efficiency they make a whole), and the thread alone. */
export function effortShares(screw: Screw) {
  const collarShare = collarTorque(screw, 1) / raisingTorque(screw, 1);
  const threadOnly = { thrust: 1, lead: screw.lead, torque: threadRaisingTorque(screw, 1) };
  return {
    threadEfficiency: screwEfficiency(threadOnly),
    collarShare,
    threadShare: 1 - efficiency(screw) - collarShare,
  };
}

/** The torques that hold a thrust, tightening and loosening, and what the two alone would tell of it. */
export function torquesAt(screw: Screw, thrust: number) {
  const tighteningTorque = raisingTorque(screw, thrust);
  const looseningTorque = loweringTorque(screw, thrust);
  const both = { tighteningTorque, looseningTorque };
  return {
    threadTorque: threadRaisingTorque(screw, thrust),
    collarTorque: collarTorque(screw, thrust),
    looseningTorque,
    efficiencyByTwo: efficiencyFromTwoTorques(both),
    thrustByTwo: thrustEstimateFromTwoTorques(both, screw.lead),
  };
}
