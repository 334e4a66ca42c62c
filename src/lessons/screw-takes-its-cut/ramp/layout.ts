/** Where the unrolled thread, its forces and its flank stand, on a wide page and on a phone, in units of the drawing. */

/** One layout; cylinder and ramp share one scale, set by one turn being `ramp.base` long. */
export interface RampLayout {
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
  /** The cylinder that the thread winds round: its axis, its ends. */
  readonly cylinder: { readonly x: number; readonly top: number; readonly bottom: number };
  readonly ramp: { readonly left: number; readonly base: number; readonly y: number };
  readonly block: { readonly length: number; readonly height: number };
  readonly cone: number;
  /** Nothing but the cone stands above this. */
  readonly highest: number;
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
  height: 378,
  narrow: false,
  cylinder: { x: 66, top: 74, bottom: 340 },
  ramp: { left: 148, base: 330, y: 320 },
  block: { length: 72, height: 38 },
  cone: 190,
  highest: 22,
  triangle: { x: 634, y: 18, load: 222, rowHeight: 28 },
  flank: { x: 756, y: 24, pitch: 38, wordsX: 756, wordsY: 130 },
};

const NARROW: RampLayout = {
  width: 360,
  height: 392,
  narrow: true,
  cylinder: { x: 34, top: 60, bottom: 182 },
  ramp: { left: 76, base: 192, y: 170 },
  block: { length: 46, height: 24 },
  cone: 104,
  highest: 14,
  triangle: { x: 92, y: 224, load: 98, rowHeight: 20 },
  flank: { x: 290, y: 226, pitch: 26, wordsX: 356, wordsY: 300 },
};

/** The layout for a width of screen. */
export function rampLayout(narrow: boolean): RampLayout {
  return narrow ? NARROW : WIDE;
}
