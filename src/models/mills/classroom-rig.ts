/**
 * The sizes of the classroom rig: a strip of band steel between two grips in a steel frame, pulled in line by a screw.
 * It has one strand, so the screw's whole pull is in the strip.
 * Units: SI.
 * Source: invented; the steel has the site's usual values.
 */
import { bandSteel } from '../../core/assumptions.ts';

/** The rig as it is measured. */
export const RIG = {
  width: 0.02,
  thickness: 0.0008,
  betweenGrips: 0.7,
  frameStiffness: 15e6,
  thread: 'M12',
  friction: 0.15, // of the thread and of the washer
  washer: { outerDiameter: 0.024, innerDiameter: 0.013 },
  dragTorque: 0.2,
  mostTorque: 5, // nobody goes beyond it
  gaugeLength: 0.3,
  graduation: 5e-6, // of its dial
  youngsModulus: bandSteel.youngsModulus,
} as const;

/** The rig as it is built: what holds the strip, and the frame around it. */
export const BUILD = {
  gripLength: 0.06, // of the strip, in each grip
  gripWidth: 0.07,
  gripThickness: 0.008, // of each of a grip's two plates
  tube: 0.03, // across, of each of the frame's two square tubes
  tubeWall: 0.003,
  tubeGap: 0.08, // clear, between the tubes
  takeUp: 0.04, // behind the moving grip
  plateThickness: 0.012,
  plateWidth: 0.15,
  plateHeight: 0.06,
  gripBolt: 'M8',
  gripBolts: 2, // on each grip
  gripFriction: 0.15, // of plates on the strip
  gripReserve: 2, // how many times the largest pull a grip holds
} as const;
