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
  height: 448,
  narrow: false,
  plot: { left: 62, right: 850, top: 58, bottom: 308 },
  bar: { left: 62, right: 850, top: 408, height: 34 },
};

const NARROW: EfficiencyLayout = {
  width: 360,
  height: 334,
  narrow: true,
  plot: { left: 46, right: 350, top: 54, bottom: 210 },
  bar: { left: 4, right: 356, top: 302, height: 28 },
};

/** The layout for a width of screen. */
export function efficiencyLayout(narrow: boolean): EfficiencyLayout {
  return narrow ? NARROW : WIDE;
}
