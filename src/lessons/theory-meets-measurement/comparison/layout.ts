/** Where the parts of the figure `theory-meets-measurement` stand, on a wide page and on a phone, in drawing units. */
import type { Frame } from '../../../figures/stress-plot/scales.ts';

/** Both ends of the torque axis, N·m, and of the stress axis, Pa. */
export const TORQUE_ENDS = [0, 16] as const;
export const STRESS_ENDS = [0, 170e6] as const;

/** One layout. */
export interface ComparisonLayout {
  readonly width: number;
  readonly height: number;
  readonly plot: Frame;
  /** The strip of what the line misses, under the plot on the same torques. */
  readonly strip: Frame;
  /** Prediction and measurement beside each other: upright beside the plot, or level under the strip. */
  readonly intervals: Frame;
  /** The scale of the agreement number. */
  readonly agreement: Frame;
}

const WIDE: ComparisonLayout = {
  width: 880,
  height: 530,
  plot: { left: 64, right: 640, top: 34, bottom: 334 },
  strip: { left: 64, right: 640, top: 376, bottom: 486 },
  intervals: { left: 722, right: 818, top: 34, bottom: 334 },
  agreement: { left: 690, right: 850, top: 448, bottom: 470 },
};

const NARROW: ComparisonLayout = {
  width: 360,
  height: 452,
  plot: { left: 46, right: 352, top: 24, bottom: 190 },
  strip: { left: 46, right: 352, top: 230, bottom: 296 },
  intervals: { left: 138, right: 352, top: 352, bottom: 380 },
  agreement: { left: 176, right: 352, top: 414, bottom: 430 },
};

/** The layout for a width of screen. */
export function comparisonLayout(narrow: boolean): ComparisonLayout {
  return narrow ? NARROW : WIDE;
}
