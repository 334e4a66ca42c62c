/**
 * The loop round two wheels: its length, and what gives way in it. The door of its room.
 * Units: SI only (m, N, Pa, rad).
 * Source: named in each file of the room.
 */

export {
  bandStiffness,
  bandStiffnessBeforeRolling,
  bandStiffnessLocked,
} from './loop/band-stiffness.ts';
export { discForce } from './loop/disc-spring.ts';
export { type DiscStack, stackTravel } from './loop/disc-stack.ts';
export {
  coilEnergy,
  coilRadius,
  kineticEnergy,
  recoilSpeed,
  stretchEnergy,
  supportEnergy,
} from './loop/energy.ts';
export {
  type EqualLoop,
  freeStrand,
  loopLength,
  loopLengthEqual,
  smallerWheelWrap,
  strandHalfAngle,
  type Wheels,
} from './loop/geometry.ts';
export {
  type Cylinder,
  hydraulicThrust,
  oilGrowth,
  oilStiffness,
  pressureForThrust,
} from './loop/hydraulic.ts';
export { forceAtTravel, type PartsInARow } from './loop/in-a-row.ts';
