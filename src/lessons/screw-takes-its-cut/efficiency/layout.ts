/** Where the efficiency curve and the bar of effort stand, on a wide page and on a phone, in units of the drawing. */

import type { BarLayout } from '../ramp/layout.ts';

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
  readonly bar: BarLayout;
}

const WIDE: EfficiencyLayout = {
  width: 880,
  height: 438,
  narrow: false,
  plot: { left: 62, right: 850, top: 48, bottom: 304 },
  bar: { left: 62, right: 850, top: 398, height: 34 },
};

const NARROW: EfficiencyLayout = {
  width: 360,
  height: 326,
  narrow: true,
  plot: { left: 40, right: 350, top: 44, bottom: 208 },
  bar: { left: 4, right: 356, top: 294, height: 28 },
};

/** The layout for a width of screen. */
export function efficiencyLayout(narrow: boolean): EfficiencyLayout {
  return narrow ? NARROW : WIDE;
}
