/** Where the parts of the stiff-spring figure stand, on a wide page and on a phone, in units of the drawing. */

/** The frame of a plot. */
export interface PlotFrame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** One layout. */
export interface StripLayout {
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
  /** The strip: inner edge of the fixed clamp, drawing units for a metre of it, how wide it is drawn, middle line. */
  readonly left: number;
  readonly perLength: number;
  readonly thick: number;
  readonly middle: number;
  /** Drawing units for a metre of stretch. */
  readonly perStretch: number;
  /** The levels of the guess and of the truth, under the strip and right of the gauge length's dimension. */
  readonly marks: { readonly guess: number; readonly truth: number };
  /** The plot, the start of its line drawn larger beside it, and how many times. */
  readonly plot: PlotFrame;
  readonly inset: PlotFrame;
  readonly times: number;
}

const WIDE: StripLayout = {
  width: 880,
  height: 500,
  narrow: false,
  left: 60,
  perLength: 540,
  thick: 16,
  middle: 80,
  perStretch: 70_000,
  marks: { guess: 140, truth: 161 },
  plot: { left: 62, right: 470, top: 215, bottom: 450 },
  inset: { left: 530, right: 870, top: 260, bottom: 450 },
  times: 6,
};

const NARROW: StripLayout = {
  width: 360,
  height: 352,
  narrow: true,
  left: 22,
  perLength: 190,
  thick: 10,
  middle: 56,
  perStretch: 24_000,
  marks: { guess: 112, truth: 128 },
  plot: { left: 40, right: 170, top: 154, bottom: 304 },
  inset: { left: 212, right: 352, top: 203, bottom: 304 },
  times: 5,
};

/** The layout for a width of screen. */
export function stripLayout(narrow: boolean): StripLayout {
  return narrow ? NARROW : WIDE;
}
