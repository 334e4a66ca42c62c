/**
 * A plan's minutes as a teacher reads them: when each part begins, counted from the start.
 * Units: minutes.
 */

/** A number to tell the class: words with `{name}` for a value of the rig's model or of a lesson's, at these inputs. */
export interface Tell {
  readonly of: string;
  readonly at?: Readonly<Record<string, number | string>> | 'asked' | undefined;
  readonly says: string;
}

/** One part of a plan. */
export interface Timing {
  readonly minutes: number;
  readonly what: string;
  readonly how: string;
  /** The hand-out that is filled in, by the key of its lesson. */
  readonly handout?: string | undefined;
  /** The figures to show: `lesson/figure`. */
  readonly figures?: readonly string[] | undefined;
  /** Other pages of ours that it needs. */
  readonly go?: readonly { readonly to: string; readonly says: string }[] | undefined;
  readonly tell?: readonly Tell[] | undefined;
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
