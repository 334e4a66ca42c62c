/** Where the dials and their words stand, on a wide page and on a phone, in units of the drawing. */
import type { DialPlace } from '../../../figures/dial/Face.tsx';

/** One layout. */
export interface ReadingLayout {
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
  /** The dials of two looks, before and now, and the dial of one look. On a phone they are all the same one. */
  readonly before: DialPlace;
  readonly now: DialPlace;
  readonly one: DialPlace;
  /** The line under the dials: its height, and where it begins; it ends as far from the other edge. */
  readonly foot: number;
  readonly left: number;
}

const WIDE = { y: 206, radius: 176 };
const PHONE = { x: 180, y: 147, radius: 129 };

const layouts: Readonly<Record<'wide' | 'phone', ReadingLayout>> = {
  wide: {
    width: 880,
    height: 432,
    narrow: false,
    before: { x: 216, ...WIDE },
    now: { x: 664, ...WIDE },
    one: { x: 440, ...WIDE },
    foot: 420,
    left: 40,
  },
  phone: {
    width: 360,
    height: 320,
    narrow: true,
    before: PHONE,
    now: PHONE,
    one: PHONE,
    foot: 312,
    left: 4,
  },
};

/** The layout for a width of screen. */
export function readingLayout(narrow: boolean): ReadingLayout {
  return narrow ? layouts.phone : layouts.wide;
}
