/** Where the parts of the figure `theory-meets-measurement` stand, on a wide page and on a phone, in drawing units. */
import type { Frame } from './torque-frame.ts';

/** One layout. */
export interface ComparisonLayout {
  readonly width: number;
  readonly height: number;
  readonly plot: Frame;
  /** The strip of what the line misses, under the plot on the same torques. */
  readonly strip: Frame;
  /** Prediction and measurement beside each other: upright beside the plot, or level under the strip. */
  readonly intervals: Frame;
}

const WIDE: ComparisonLayout = {
  width: 880,
  height: 520,
  plot: { left: 64, right: 640, top: 34, bottom: 334 },
  strip: { left: 64, right: 640, top: 380, bottom: 470 },
  intervals: { left: 730, right: 826, top: 34, bottom: 334 },
};

const NARROW: ComparisonLayout = {
  width: 360,
  height: 400,
  plot: { left: 38, right: 352, top: 24, bottom: 194 },
  strip: { left: 38, right: 352, top: 224, bottom: 278 },
  intervals: { left: 76, right: 352, top: 332, bottom: 360 },
};

/** The layout for a width of screen. */
export function comparisonLayout(narrow: boolean): ComparisonLayout {
  return narrow ? NARROW : WIDE;
}
