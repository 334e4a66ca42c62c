/** Where the parts of the figure that finds the frame stand, on a wide page and on a phone. Units: drawing units. */

/** One layout: the plot of stretch against turns, and the rule of stiffness under it. */
export interface FramePlotLayout {
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly rule: { readonly left: number; readonly right: number; readonly y: number };
}

const WIDE: FramePlotLayout = {
  width: 880,
  height: 424,
  narrow: false,
  left: 92,
  right: 850,
  top: 66,
  bottom: 276,
  rule: { left: 92, right: 850, y: 378 },
};

const NARROW: FramePlotLayout = {
  width: 360,
  height: 360,
  narrow: true,
  left: 62,
  right: 346,
  top: 62,
  bottom: 212,
  rule: { left: 14, right: 346, y: 314 },
};

/** The layout for a width of screen. */
export function framePlotLayout(narrow: boolean): FramePlotLayout {
  return narrow ? NARROW : WIDE;
}
