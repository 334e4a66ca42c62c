/**
 * Where the checks are drawn on their scale of stress, on a wide page and on a phone.
 * Units: drawing units; Pa in the scale.
 */
import { linearScale, type Scale } from '../../../figures/scale.ts';

/** One layout. */
export interface ChecksLayout {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  /** The levels of the three checks; their words stand so far above. */
  readonly rows: readonly [number, number, number];
  readonly above: number;
  readonly axis: number;
}

const WIDE: ChecksLayout = {
  width: 880,
  height: 320,
  left: 40,
  right: 840,
  rows: [66, 146, 226],
  above: 20,
  axis: 262,
};

const NARROW: ChecksLayout = {
  width: 360,
  height: 280,
  left: 12,
  right: 348,
  rows: [50, 122, 194],
  above: 18,
  axis: 226,
};

const MOST = 200e6; // Pa

/** The ends of the scale. */
export const ENDS = [0, MOST] as const;

/** The layout for a width of screen. */
export const checksLayout = (narrow: boolean): ChecksLayout => (narrow ? NARROW : WIDE);

/** From a stress to its place. */
export const stressScale = ({ left, right }: ChecksLayout): Scale =>
  linearScale(ENDS, [left, right]);
