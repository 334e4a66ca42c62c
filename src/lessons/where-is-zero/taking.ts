/**
 * How the series of the lesson are taken: at which torques, how many, and from which seeds of the bench.
 * Units: N·m.
 * Source: definition.
 */
const READINGS = 10;
const STEP = 1.5; // N·m

/** The torques of every series, in equal steps. */
export const TORQUES: readonly number[] = Array.from(
  { length: READINGS },
  (_, place) => STEP * (place + 1),
);

/** How many series there are to choose from; their numbers begin with 1. */
export const SERIES = 20;

/** Where a series is in a list of all, by its number; between two numbers it is the nearer one. */
export const placeOfSeries = (number: number): number =>
  Math.min(SERIES, Math.max(1, Math.round(number))) - 1;

/** The seed of a series by its number. */
export const seedOfSeries = (number: number): number => number + 19;

/** How many repeats are simulated at once: the first lot by the build, the others when the reader asks. */
export const LOT = 300;

/** As many repeats as the reader can ask for. */
export const MOST_REPEATS = 7 * LOT;

/** The seed of a repeat by its place, counted from 0: none of them is a series to choose. */
export const seedOfRepeat = (place: number): number => 1001 + place;
