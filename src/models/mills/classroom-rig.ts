/**
 * The sizes of the classroom rig: a strip of band steel between two grips in a steel frame, pulled in line by a screw.
 * It has one strand, so the screw's whole pull is in the strip.
 * Units: SI.
 * Source: invented; the steel has the site's usual values.
 */
import { bandSteel } from '../../core/assumptions.ts';

/** The rig. */
export const RIG = {
  width: 0.02,
  thickness: 0.0008,
  betweenGrips: 0.7,
  frameStiffness: 15e6,
  thread: 'M12',
  friction: 0.15, // of the thread and of the washer
  washer: { outerDiameter: 0.024, innerDiameter: 0.013 },
  dragTorque: 0.2,
  gaugeLength: 0.3,
  graduation: 5e-6, // of its dial
  youngsModulus: bandSteel.youngsModulus,
} as const;
