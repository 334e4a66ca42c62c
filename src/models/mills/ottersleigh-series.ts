/**
 * One loading series taken at Ottersleigh, and how well it was taken.
 * Units: SI.
 * Source: invented; the readings were drawn from a simulated mill. Repeatability and graduation as such rigs have,
 * common practice, no source.
 */

/** Torque on the wrench, N·m, and stretch since the first reading, m. */
export const LOADING_SERIES = {
  torques: [1.5, 3, 4.5, 5.5, 7, 8.5, 10, 11.5, 13, 14.5],
  readings: [0, -5e-6, 10e-6, 20e-6, 45e-6, 65e-6, 95e-6, 115e-6, 145e-6, 155e-6],
} as const;

/** The highest torque of the series, N·m. */
export const TOP_TORQUE = Math.max(...LOADING_SERIES.torques);

/** The dial on its bar: one graduation, and the standard deviation of a repeated reading, m. */
export const DIAL = { graduation: 1e-5, repeatability: 5e-6 } as const;

/** Standard uncertainty of the drag, N·m. */
export const DRAG_DOUBT = 0.1;

/** What the simulation that gave the readings had in its thread: nobody at the mill knows it. */
export const HIDDEN_THREAD_FRICTION = 0.154;
