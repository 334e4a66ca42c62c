/** Where the unrolled thread, its forces and its flank stand, on a wide page and on a phone, in units of the drawing. */

/** One layout; cylinder and ramp share one scale, set by one turn being `ramp.base` long. */
export interface RampLayout {
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
  /** Line of words that says whether the thread holds. */
  readonly words: number;
  /** The cylinder that the thread winds round: its axis, its ends. */
  readonly cylinder: { readonly x: number; readonly top: number; readonly bottom: number };
  readonly ramp: { readonly left: number; readonly base: number; readonly y: number };
  readonly block: { readonly length: number; readonly height: number };
  readonly cone: number;
  /** The triangle of forces: its upper corner, the length drawn for the load, the rows of pushes under it. */
  readonly triangle: {
    readonly x: number;
    readonly y: number;
    readonly load: number;
    readonly rowHeight: number;
  };
  /** The flank: upper left corner, pitch as drawn, where its words start. */
  readonly flank: {
    readonly x: number;
    readonly y: number;
    readonly pitch: number;
    readonly wordsX: number;
    readonly wordsY: number;
  };
}

const WIDE: RampLayout = {
  width: 880,
  height: 440,
  narrow: false,
  words: 22,
  cylinder: { x: 66, top: 130, bottom: 392 },
  ramp: { left: 148, base: 330, y: 372 },
  block: { length: 72, height: 38 },
  cone: 190,
  triangle: { x: 660, y: 56, load: 160, rowHeight: 28 },
  flank: { x: 610, y: 352, pitch: 36, wordsX: 676, wordsY: 378 },
};

const NARROW: RampLayout = {
  width: 360,
  height: 424,
  narrow: true,
  words: 14,
  cylinder: { x: 34, top: 92, bottom: 214 },
  ramp: { left: 76, base: 200, y: 202 },
  block: { length: 46, height: 24 },
  cone: 104,
  triangle: { x: 92, y: 262, load: 92, rowHeight: 20 },
  flank: { x: 282, y: 252, pitch: 26, wordsX: 356, wordsY: 326 },
};

/** The layout for a width of screen. */
export function rampLayout(narrow: boolean): RampLayout {
  return narrow ? NARROW : WIDE;
}
