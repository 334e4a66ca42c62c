/** Where the parts of the stiff-spring figure stand, on a wide page and on a phone, in units of the drawing. */

/** One layout. */
export interface StripLayout {
  readonly width: number;
  readonly height: number;
  /** The strip: inner edge of the fixed clamp, drawing units for a metre of it, how wide it is drawn, middle line. */
  readonly left: number;
  readonly perLength: number;
  readonly thick: number;
  readonly middle: number;
  /** Drawing units for a metre of stretch. */
  readonly perStretch: number;
  /** The plot's frame. */
  readonly plot: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
}

const WIDE: StripLayout = {
  width: 880,
  height: 500,
  left: 60,
  perLength: 600,
  thick: 16,
  middle: 80,
  perStretch: 75_000,
  plot: { left: 70, right: 850, top: 215, bottom: 450 },
};

const NARROW: StripLayout = {
  width: 360,
  height: 352,
  left: 22,
  perLength: 200,
  thick: 10,
  middle: 56,
  perStretch: 24_000,
  plot: { left: 46, right: 352, top: 154, bottom: 304 },
};

/** The layout for a width of screen. */
export function stripLayout(narrow: boolean): StripLayout {
  return narrow ? NARROW : WIDE;
}
