/** Where rig, handle and dial stand, on a wide page and on a phone, in units of the drawing. */
import type { DialPlace } from '../../figures/dial/Face.tsx';

/** One layout. */
export interface BenchLayout {
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
  readonly dial: DialPlace;
  /** The wheels: their centres, the height of both, their radius; and how far down they are drawn. */
  readonly left: number;
  readonly right: number;
  readonly axis: number;
  readonly radius: number;
  readonly isWhole: boolean;
  /** The handle seen along the screw. */
  readonly handle: { readonly x: number; readonly y: number; readonly reach: number };
  /** Where the words under the handle stand, and what the corners of the dial say. */
  readonly words: number;
  readonly corner: { readonly left: number; readonly right: number; readonly y: number };
}

const WIDE: BenchLayout = {
  width: 880,
  height: 300,
  narrow: false,
  dial: { x: 728, y: 150, radius: 146 },
  left: 78,
  right: 346,
  axis: 160,
  radius: 70,
  isWhole: true,
  handle: { x: 500, y: 160, reach: 42 },
  words: 240,
  corner: { left: 562, right: 880, y: 274 },
};

const PHONE: BenchLayout = {
  width: 360,
  height: 322,
  narrow: true,
  dial: { x: 180, y: 203, radius: 117 },
  left: 30,
  right: 228,
  axis: 96,
  radius: 50,
  isWhole: false,
  handle: { x: 318, y: 36, reach: 30 },
  words: 84,
  corner: { left: 2, right: 358, y: 300 },
};

/** The layout for a width of screen. */
export const benchLayout = (narrow: boolean): BenchLayout => (narrow ? PHONE : WIDE);
