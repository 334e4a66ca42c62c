/** Where the parts of the comparison of the three routes are, on a wide page and on a phone, in drawing units. */

/** One layout. */
export interface RoutesLayout {
  readonly width: number;
  readonly height: number;
  /** The stress axis: ends, its line. */
  readonly left: number;
  readonly right: number;
  readonly axis: number;
  /** The levels of the three routes. */
  readonly rows: readonly [number, number, number];
  /** Where the names of the routes begin, how far above their rows. */
  readonly names: { readonly x: number; readonly above: number };
  /** The agreement of the pairs: the inner and the outer brackets; or where a list begins, from line to line. */
  readonly pairs: {
    readonly x: number;
    readonly outer: number;
    readonly y: number;
    readonly line: number;
  };
}

const WIDE: RoutesLayout = {
  width: 880,
  height: 300,
  left: 120,
  right: 600,
  axis: 250,
  rows: [70, 140, 210],
  names: { x: 20, above: 0 },
  pairs: { x: 652, outer: 772, y: 0, line: 0 },
};

const NARROW: RoutesLayout = {
  width: 360,
  height: 310,
  left: 16,
  right: 344,
  axis: 196,
  rows: [44, 100, 156],
  names: { x: 16, above: 20 },
  pairs: { x: 16, outer: 16, y: 254, line: 22 },
};

/** The layout for a width of screen. */
export const routesLayout = (narrow: boolean): RoutesLayout => (narrow ? NARROW : WIDE);
