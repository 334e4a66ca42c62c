/** Where the parts of the figure `wrong-zeros` are, on a wide page and on a phone, in drawing units. */
import type { Frame } from '../../../figures/stress-plot/scales.ts';
import { dialScales } from '../dial-scales.ts';

/** One layout. */
export interface WrongLayout {
  readonly width: number;
  readonly height: number;
  readonly plot: Frame;
  /** Where the three measures stand, right of the plot. */
  readonly measures: readonly [number, number, number];
  /** The table of the three: its rows, and where its columns begin or end. */
  readonly table: {
    readonly top: number;
    readonly row: number;
    readonly columns: readonly number[];
  };
}

const WIDE: WrongLayout = {
  width: 880,
  height: 372,
  plot: { left: 64, right: 470, top: 30, bottom: 326 },
  measures: [502, 534, 566],
  table: { top: 96, row: 62, columns: [602, 634, 880] },
};

const NARROW: WrongLayout = {
  width: 360,
  height: 360,
  plot: { left: 50, right: 262, top: 24, bottom: 212 },
  measures: [286, 314, 342],
  table: { top: 264, row: 37, columns: [0, 22, 360] },
};

/** The layout for a width of screen. */
export function wrongLayout(narrow: boolean): WrongLayout {
  return narrow ? NARROW : WIDE;
}

/** Both ends of the torque axis, N·m: the grip at the no-load torque is clear of the upright axis. */
export const TORQUE_ENDS = [-0.6, 15] as const;
const DIAL_ENDS = [-0.34e-3, 0.26e-3] as const; // m

/** The scales of the plot. */
export const wrongScales = (narrow: boolean) =>
  dialScales(wrongLayout(narrow).plot, TORQUE_ENDS, DIAL_ENDS);
