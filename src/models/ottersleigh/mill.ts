/**
 * The invented mill at Ottersleigh: its band, its screw, its rig, and one loading series taken on it.
 * Units: SI.
 * Source: invented; the readings were drawn from a simulated mill. Frictions from handbook ranges
 * (`screw-friction`), from memory; repeatability and graduation as such rigs have, common practice, no source.
 */
import { wornCollarDiameter } from '../../core/collar.ts';
import type { Screw } from '../../core/screw.ts';
import { screwOnThread } from '../../core/screw-on-thread.ts';
import { sectionArea } from '../../core/section.ts';
import { threadProfile } from '../../core/thread-profile.ts';

/** The mill as it was measured; the screw pulls the wheel in line. */
export const OTTERSLEIGH = {
  bodyWidth: 0.029,
  thickness: 0.001,
  threadFriction: { low: 0.1, high: 0.18 },
  /** What the simulation that gave the readings had in its thread: nobody at the mill knows it. */
  hiddenThreadFriction: 0.154,
  collarFriction: 0.004,
  dragTorque: { value: 0.8, standardUncertainty: 0.1 },
  gaugeLength: 0.4,
  graduation: 1e-5,
  repeatability: 5e-6,
  targetStress: 110e6,
} as const;

/** The loading series: torque on the wrench, N·m, and stretch since the first reading, m. */
export const LOADING_SERIES = {
  torques: [1.5, 3, 4.5, 5.5, 7, 8.5, 10, 11.5, 13, 14.5],
  readings: [0, -5e-6, 10e-6, 20e-6, 45e-6, 65e-6, 95e-6, 115e-6, 145e-6, 155e-6],
} as const;

/** The highest torque of the series, N·m. */
export const TOP_TORQUE = Math.max(...LOADING_SERIES.torques);

/** Load-bearing section of the band, m². */
export const bandArea = sectionArea({
  width: OTTERSLEIGH.bodyWidth,
  thickness: OTTERSLEIGH.thickness,
});

const trapezoidal = threadProfile('trapezoidal', { majorDiameter: 0.02, pitch: 0.004 });
const collarDiameter = wornCollarDiameter({ outerDiameter: 0.042, innerDiameter: 0.02 });

/** The screw with a given thread friction, and with its one start or with more. */
export function screwWith(threadFriction: number, starts = 1): Screw {
  const { collarFriction } = OTTERSLEIGH;
  return screwOnThread(trapezoidal, { threadFriction, starts, collarFriction, collarDiameter });
}
