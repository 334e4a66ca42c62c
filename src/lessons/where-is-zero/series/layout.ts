/** Where the parts of the figure `series` are, on a wide page and on a phone, in drawing units. */
import type { Frame } from '../../../figures/stress-plot/scales.ts';
import { dialScales } from '../dial-scales.ts';

/** One layout. */
export interface SeriesLayout {
  readonly width: number;
  readonly height: number;
  readonly plot: Frame;
  /** Where the zeros stand beside each other: the reader’s, the classroom rule’s, that of all readings. */
  readonly columns: readonly [number, number, number];
  /** The table of the zeros: the first row, the height of a row, where its columns begin or end. */
  readonly table: {
    readonly top: number;
    readonly row: number;
    readonly columns: readonly number[];
  };
}

const WIDE: SeriesLayout = {
  width: 880,
  height: 440,
  plot: { left: 64, right: 520, top: 30, bottom: 394 },
  columns: [548, 576, 604],
  table: { top: 60, row: 84, columns: [640, 880] },
};

const NARROW: SeriesLayout = {
  width: 360,
  height: 352,
  plot: { left: 50, right: 270, top: 24, bottom: 226 },
  columns: [292, 317, 342],
  table: { top: 280, row: 22, columns: [0, 360] },
};

/** The layout for a width of screen. */
export function seriesLayout(narrow: boolean): SeriesLayout {
  return narrow ? NARROW : WIDE;
}

/** Both ends of the torque axis, N·m: the grip is left of the no-load torque, so as to hide no reading. */
export const TORQUE_ENDS = [-2.4, 16] as const;
/** Both ends of the dial's axis, m, from the first reading. */
export const DIAL_ENDS = [-0.22e-3, 0.34e-3] as const;

/** The scales of the plot. */
export const seriesScales = (narrow: boolean) =>
  dialScales(seriesLayout(narrow).plot, TORQUE_ENDS, DIAL_ENDS);
