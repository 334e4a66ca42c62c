/** Where the parts of the figure `repeats` are, on a wide page and on a phone, in drawing units. */
import { linearScale, type Scale } from '../../../figures/scale.ts';
import { REACH } from './rules.ts';

/** One layout. */
export interface RepeatsLayout {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  /** The ground of each histogram, and how high its highest bar may be. */
  readonly grounds: readonly [number, number];
  readonly high: number;
  /** Where the words of each histogram begin: right of it, or above it. */
  readonly words: { readonly x: number; readonly up: number };
}

const WIDE: RepeatsLayout = {
  width: 880,
  height: 372,
  left: 20,
  right: 620,
  grounds: [160, 320],
  high: 140,
  words: { x: 650, up: 84 },
};

const NARROW: RepeatsLayout = {
  width: 360,
  height: 346,
  left: 6,
  right: 354,
  grounds: [134, 286],
  high: 92,
  words: { x: 0, up: 120 },
};

/** The layout for a width of screen. */
export function repeatsLayout(narrow: boolean): RepeatsLayout {
  return narrow ? NARROW : WIDE;
}

/** From an error of the zero, m, to its place. */
export function errorScale({ left, right }: RepeatsLayout): Scale {
  return linearScale([-REACH, REACH], [left, right]);
}
