/** Where the efficiency curve and the bar of effort stand, on a wide page and on a phone, in units of the drawing. */

/** One layout. */
export interface EfficiencyLayout {
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
  readonly plot: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
  readonly bar: { readonly top: number; readonly height: number };
}

const WIDE: EfficiencyLayout = {
  width: 880,
  height: 472,
  narrow: false,
  plot: { left: 62, right: 850, top: 34, bottom: 290 },
  bar: { top: 388, height: 40 },
};

const NARROW: EfficiencyLayout = {
  width: 360,
  height: 352,
  narrow: true,
  plot: { left: 40, right: 350, top: 26, bottom: 190 },
  bar: { top: 272, height: 34 },
};

/** The layout for a width of screen. */
export function efficiencyLayout(narrow: boolean): EfficiencyLayout {
  return narrow ? NARROW : WIDE;
}
