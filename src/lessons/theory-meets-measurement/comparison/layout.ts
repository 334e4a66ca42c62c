/** Where the parts of the figure `theory-meets-measurement` are, on a wide page and on a phone, in drawing units. */
import type { Frame } from '../../../figures/stress-plot/scales.ts';

/** Both ends of the torque axis, N·m, and of the stress axis, Pa. */
export const TORQUE_ENDS = [0, 16] as const;
export const STRESS_ENDS = [0, 180e6] as const;

/** A point at which words end or begin: a torque and a stress, SI. */
type WordsAt = readonly [torque: number, stress: number];

/** One layout. */
export interface ComparisonLayout {
  readonly width: number;
  readonly height: number;
  readonly plot: Frame;
  /** Where the words of the plot are, clear of every line that the reader can tilt. */
  readonly words: { readonly area: WordsAt; readonly toe: WordsAt; readonly fit: number };
  /** Height of a line of words. */
  readonly line: number;
  /** The strip of what the line misses, under the plot on the same torques. */
  readonly strip: Frame;
  /** Prediction and measurement beside each other: upright beside the plot, or level under the strip. */
  readonly intervals: Frame;
  /** The scale of the agreement number; on a phone only its words. */
  readonly agreement: Frame;
}

const WIDE: ComparisonLayout = {
  width: 880,
  height: 530,
  plot: { left: 64, right: 600, top: 34, bottom: 334 },
  words: { area: [7.5, 86e6], toe: [0.3, 36e6], fit: 8.6 },
  line: 18,
  strip: { left: 64, right: 600, top: 376, bottom: 486 },
  intervals: { left: 728, right: 818, top: 34, bottom: 334 },
  agreement: { left: 696, right: 850, top: 458, bottom: 480 },
};

const NARROW: ComparisonLayout = {
  width: 360,
  height: 390,
  plot: { left: 46, right: 292, top: 24, bottom: 172 },
  words: { area: [9.5, 107e6], toe: [0.2, 57e6], fit: 9.6 },
  line: 16,
  strip: { left: 46, right: 292, top: 208, bottom: 262 },
  intervals: { left: 150, right: 352, top: 316, bottom: 338 },
  agreement: { left: 0, right: 352, top: 382, bottom: 382 },
};

/** The layout for a width of screen. */
export function comparisonLayout(narrow: boolean): ComparisonLayout {
  return narrow ? NARROW : WIDE;
}
