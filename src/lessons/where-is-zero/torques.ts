/**
 * The torques of every series of the lesson, in equal steps.
 * Units: N·m.
 * Source: definition.
 */
const READINGS = 10;
const STEP = 1.5;

/** From the first to the highest. */
export const TORQUES: readonly number[] = Array.from(
  { length: READINGS },
  (_, place) => STEP * (place + 1),
);
