/**
 * The invented mill at Ottersleigh, on which most lessons stand: its loop, its band, its screw, what is usual to
 * believe of it. The screw pulls the movable wheel in line; a ball bearing sits under its head.
 * Units: SI.
 * Source: invented; frictions from handbook ranges (`screw-friction`), from memory; the steel has the site's usual
 * values.
 */

import { bandSteel } from '../../core/assumptions.ts';
import type { Screw } from '../../core/screw.ts';
import { screwOnThread, wornCollarDiameter } from '../../core/screw.ts';
import { sectionArea } from '../../core/section.ts';
import { pitchDiameter, threadHalfAngle } from '../../core/threads.ts';

/** The mill's sizes; both wheels are alike. */
export const OTTERSLEIGH = {
  place: 'Ottersleigh',
  wheelDiameter: 0.52,
  centreDistance: 1.35,
  widthOverTeeth: 0.035,
  bodyWidth: 0.029,
  thickness: 0.001,
  guideSpan: 0.55,
  threadSize: { majorDiameter: 0.02, pitch: 0.004 }, // trapezoidal, Tr20x4
  threadFriction: { low: 0.1, middle: 0.14, high: 0.18 },
  collar: { outerDiameter: 0.042, innerDiameter: 0.02 },
  collarFriction: 0.004,
  dragTorque: 0.8,
  frameStiffness: 8e6,
  gaugeLength: 0.4,
  graduation: 1e-5, // of its dial
  targetStress: 110e6,
  youngsModulus: bandSteel.youngsModulus,
  density: bandSteel.density,
  coilRings: 3,
  speed: 24,
} as const;

/** Load-bearing section of the band, m². */
export const bandArea = sectionArea({
  width: OTTERSLEIGH.bodyWidth,
  thickness: OTTERSLEIGH.thickness,
});

const profile = {
  pitch: OTTERSLEIGH.threadSize.pitch,
  pitchDiameter: pitchDiameter('trapezoidal', OTTERSLEIGH.threadSize),
  halfAngle: threadHalfAngle.trapezoidal,
};
const collarDiameter = wornCollarDiameter(OTTERSLEIGH.collar);

/** The screw with a given thread friction, and with its one start or with more. */
export function screwWith(threadFriction: number, starts = 1): Screw {
  const { collarFriction } = OTTERSLEIGH;
  return screwOnThread(profile, { threadFriction, starts, collarFriction, collarDiameter });
}
