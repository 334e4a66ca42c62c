/**
 * The screw: thread and collar, from torque to thrust and on to the wheel. The door of its room.
 * Units: SI only (m, N, N·m, rad).
 * Source: named in each file of the room.
 */

export { collarTorque, wornCollarDiameter } from './screw/collar.ts';
export {
  efficiencyHandbook,
  loweringTorqueHandbook,
  raisingTorqueHandbook,
  selfLockingFrictionHandbook,
} from './screw/handbook.ts';
export { screwOnThread } from './screw/on-thread.ts';
export { flankFactor, leadAngle } from './screw/shape.ts';
export {
  efficiencyFromSlope,
  stressFromTorque,
  torqueForStress,
  torqueForWheelForce,
  wheelForceFromTorque,
} from './screw/tensioner.ts';
export {
  effectiveFriction,
  efficiency,
  isSelfLocking,
  loweringTorque,
  type RubbingThread,
  raisingTorque,
  type Screw,
  screwEfficiency,
  selfLockingFriction,
  threadLoweringTorque,
  threadRaisingTorque,
  thrustFromTorque,
} from './screw/torque.ts';
export { collarHeat, threadHeat, torqueWork } from './screw/turn-work.ts';
export { efficiencyFromTwoTorques, thrustEstimateFromTwoTorques } from './screw/two-torques.ts';
