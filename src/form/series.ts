/**
 * Several series in one table of readings: where each begins, and what a row is called: its number within its series.
 * Units: none; rows are counted from 0, as paths count them.
 * Source: definition.
 */
import { entriesOf, type Typed } from './typed.ts';

/** The first row of a series, and what is written for its number. */
export interface SeriesStart {
  readonly row: number;
  readonly series: string;
}

const SERIES = /^readings\.(\d+)\.series$/;
const FIRST = { row: 0, series: '1' };

/** The rows at which another series begins than that of the row above, in their order. */
export function seriesStarts(typed: Typed): readonly SeriesStart[] {
  return entriesOf(typed)
    .flatMap(([path, series]) => {
      const row = SERIES.exec(path)?.[1];
      return row === undefined ? [] : [{ row: Number(row), series }];
    })
    .sort((a, b) => a.row - b.row)
    .filter(({ series }, at, all) => series !== all[at - 1]?.series);
}

/** The number of a row within its series, from 1 on. */
export const numberInSeries = (row: number, starts: readonly SeriesStart[]): number =>
  row + 1 - startOf(row, starts).row;

/** What calls a row by its name. */
export type RowName = (row: number) => string;

/** `row 3`; where there are several series, `row 3 of series 2`. */
export const rowNamer =
  (starts: readonly SeriesStart[] = []): RowName =>
  (row) => {
    const name = `row ${numberInSeries(row, starts)}`;
    const isOne = starts.every((start) => start.row === 0);
    return isOne ? name : `${name} of series ${startOf(row, starts).series}`;
  };

const startOf = (row: number, starts: readonly SeriesStart[]): SeriesStart =>
  starts.findLast((start) => start.row <= row) ?? FIRST;
