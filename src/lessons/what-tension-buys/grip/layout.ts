/** Where the parts of the grip figure are, on a wide page and on a phone, in drawing units. */

/** One layout. */
export interface GripLayout {
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
  /** The plot of the slip margin over the power, from a margin of 1 at its bottom; how deep the strip of slip under it is. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly strip: number;
  /** The line of the reader's margin, over the plot. */
  readonly said: number;
  /** The numbers of the power, the first line of the powers at which it slips, from line to line, where the lines begin. */
  readonly numbers: number;
  readonly slips: number;
  readonly line: number;
  readonly names: number;
  /** The drive wheel: its axle and radius, units of an arrow for a newton. */
  readonly wheel: {
    readonly x: number;
    readonly y: number;
    readonly radius: number;
    readonly perForce: number;
  };
}

const WIDE: GripLayout = {
  width: 880,
  height: 456,
  narrow: false,
  left: 112,
  right: 776,
  top: 46,
  bottom: 320,
  strip: 16,
  said: 38,
  numbers: 358,
  slips: 386,
  line: 22,
  names: 16,
  wheel: { x: 728, y: 108, radius: 38, perForce: 1 / 20 },
};

const NARROW: GripLayout = {
  width: 360,
  height: 340,
  narrow: true,
  left: 76,
  right: 306,
  top: 40,
  bottom: 218,
  strip: 12,
  said: 33,
  numbers: 248,
  slips: 270,
  line: 19,
  names: 4,
  wheel: { x: 284, y: 80, radius: 20, perForce: 1 / 60 },
};

/** The layout for a width of screen. */
export const gripLayout = (narrow: boolean): GripLayout => (narrow ? NARROW : WIDE);
