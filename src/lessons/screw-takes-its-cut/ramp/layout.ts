/** Where the unrolled thread, its flank and the bar of work are, on a wide page and on a phone, in units of the drawing. */

/** Where a bar of work is. */
export interface BarLayout {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly height: number;
}

/** One layout; cylinder and ramp share one scale, set by one turn being `ramp.base` long. */
export interface RampLayout {
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
  /** The ramp tilts about its middle, where the load is. */
  readonly ramp: { readonly left: number; readonly base: number; readonly middle: number };
  readonly block: { readonly length: number; readonly height: number };
  /** The length drawn for the load; the pushes are to its scale. */
  readonly load: number;
  /** The flank: upper left corner, pitch as drawn, where its words are. */
  readonly flank: {
    readonly x: number;
    readonly y: number;
    readonly pitch: number;
    readonly wordsX: number;
    readonly wordsY: number;
  };
  readonly bar: BarLayout;
}

const WIDE: RampLayout = {
  width: 880,
  height: 462,
  narrow: false,
  ramp: { left: 206, base: 320, middle: 216 },
  block: { length: 68, height: 34 },
  load: 130,
  flank: { x: 716, y: 132, pitch: 44, wordsX: 716, wordsY: 248 },
  bar: { left: 4, right: 876, top: 404, height: 32 },
};

const NARROW: RampLayout = {
  width: 360,
  height: 336,
  narrow: true,
  ramp: { left: 76, base: 188, middle: 152 },
  block: { length: 42, height: 20 },
  load: 80,
  flank: { x: 318, y: 10, pitch: 22, wordsX: 356, wordsY: 74 },
  bar: { left: 2, right: 358, top: 288, height: 22 },
};

/** The layout for a width of screen. */
export function rampLayout(narrow: boolean): RampLayout {
  return narrow ? NARROW : WIDE;
}
