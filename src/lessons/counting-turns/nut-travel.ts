/**
 * How far band, frame and spring of a mill give under a force on the wheel, and the force, stress and torque when nut or
 * piston has gone so far.
 * Units: SI.
 * Source: springs in a row (core/band-stiffness, core/disc-stack) and the screw (core/screw), by their own sources.
 */
import {
  bandStiffness,
  discForce,
  forceAtTravel as forceOfParts,
  loopLengthEqual,
  stackTravel,
} from '../../core/loop.ts';
import { raisingTorque } from '../../core/screw.ts';
import {
  sectionArea,
  strandForce,
  strandForceAtWheel,
  strandStress,
  wheelForce,
} from '../../core/section.ts';
import { type CountingMill, type Spring, STEEL } from './mill.ts';

/** Section of one strand in m². */
export function millArea({ bodyWidth, thickness }: CountingMill): number {
  return sectionArea({ width: bodyWidth, thickness });
}

/** Stiffness of a mill's band once it has been rolled round, in N/m. */
export function millBandStiffness(mill: CountingMill): number {
  return bandStiffness({ ...STEEL, area: millArea(mill) }, loopLengthEqual(mill));
}

/** How far each part gives under a force on the wheel, in m. */
export interface Gives {
  readonly band: number;
  readonly frame: number;
  readonly spring: number;
}

/** Travel of the spring in m; disc washers that lie flat give no further. */
export function springTravel(spring: Spring, force: number): number {
  if (spring.kind === 'none') return 0;
  if (spring.kind === 'coil') return force / spring.stiffness;
  const { disc } = spring.stack;
  return stackTravel(spring.stack, Math.min(force, discForce(disc, disc.coneHeight)));
}

/** What each part gives under a force of at least 0 N. */
export function gives(
  mill: CountingMill,
  force: number,
  stiffness = millBandStiffness(mill),
): Gives {
  return {
    band: force / stiffness,
    frame: force / mill.frameStiffness,
    spring: springTravel(mill.spring, force),
  };
}

/** All gives together, in m. */
export function giveTogether(mill: CountingMill, force: number, stiffness?: number): number {
  const { band, frame, spring } = gives(mill, force, stiffness);
  return band + frame + spring;
}

/** Force on the wheel in N when nut or piston has gone so far past the slack; 0 for no travel. */
export function forceAtTravel(mill: CountingMill, travel: number): number {
  const stiffness = millBandStiffness(mill);
  return forceOfParts(
    { travelUnder: (force) => giveTogether(mill, force, stiffness), stiffness },
    travel,
  );
}

/** Stress in one strand in Pa under a force on the wheel. */
export function stressUnder(mill: CountingMill, force: number): number {
  return strandStress(strandForceAtWheel(force), millArea(mill));
}

/** Force on the wheel in N that puts a stress into the band. */
export function forceForStress(mill: CountingMill, stress: number): number {
  return wheelForce(strandForce(stress, millArea(mill)));
}

/** Torque on the nut in N·m under a force on the wheel; 0 where nothing turns. */
export function nutTorque({ screw, dragTorque = 0 }: CountingMill, force: number): number {
  return screw ? dragTorque + raisingTorque(screw, force) : 0;
}

/** Travel of the nut in one turn in m; 0 where nothing turns. */
export function nutLead({ screw }: CountingMill): number {
  return screw?.lead ?? 0;
}
