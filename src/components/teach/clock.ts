/**
 * A plan's minutes as a teacher reads them: when each part begins, counted from the start.
 * Units: minutes.
 */

/** One part of a plan. */
export interface Timing {
  readonly minutes: number;
  readonly what: string;
  readonly how: string;
}

/** A part with the minute at which it begins. */
export interface TimedPart extends Timing {
  readonly from: number;
}

/** All minutes of a plan together. */
export const totalMinutes = (timings: readonly Timing[]): number =>
  timings.reduce((sum, { minutes }) => sum + minutes, 0);

/** The parts, each with its beginning. */
export const timedParts = (timings: readonly Timing[]): readonly TimedPart[] =>
  timings.map((part, place) => ({ ...part, from: totalMinutes(timings.slice(0, place)) }));
