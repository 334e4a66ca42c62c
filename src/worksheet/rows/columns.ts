/**
 * The columns of the readings' table, and which of them are wanted: whole turns of the hand and turns of the screw
 * stand there only for who notes them.
 */
import { type BoxPath, type CellOf, cellsOf } from '../../form/paths.ts';
import type { SheetView } from '../state/view.ts';

type Cell = CellOf<'readings'>;

/** A column: its cell, its title, and the kind of its unit where it has one. */
export type Column = readonly [name: Cell, title: string, kind: 'torque' | 'stretch' | undefined];

const COLUMNS: readonly Column[] = [
  ['torque', 'Torque', 'torque'],
  ['dial', 'Dial shows', 'stretch'],
  ['wholeTurns', 'Turns of the hand', undefined],
  ['turns', 'Turns of the screw', undefined],
];

const CELLS = cellsOf('readings');

/** The text of one cell among those of a row. */
export const cellIn = (texts: readonly string[], name: Cell): string =>
  texts[CELLS.indexOf(name)] ?? '';

/** The path of a cell. */
export const pathOf = (row: number, name: Cell): BoxPath => `readings.${row}.${name}`;

/** The paths of everything in a row. */
export const pathsOf = (row: number): readonly BoxPath[] =>
  CELLS.map((name) => pathOf(row, name as Cell));

/** Whether anything has been read at a row: the number of its series alone is no reading. */
export const isFilled = (texts: readonly string[]): boolean =>
  COLUMNS.some(([name]) => cellIn(texts, name) !== '');

/** Whether something stands in a column. */
export const isInUse = (rows: readonly (readonly string[])[], name: Cell): boolean =>
  rows.some((texts) => cellIn(texts, name) !== '');

type Asked = Pick<SheetView, 'cells' | 'chosen' | 'isLive' | 'withTurns'>;

/** The columns to be shown; all of them on the form as it is built and printed blank. */
export function columnsOf({ cells, chosen, isLive, withTurns }: Asked): readonly Column[] {
  const rows = cells('readings');
  const wanted: Partial<Readonly<Record<Cell, boolean>>> = {
    wholeTurns: chosen('rig.dialWritten') !== 'together',
    turns: withTurns.value,
  };
  return COLUMNS.filter(([name]) => !isLive() || (wanted[name] ?? true) || isInUse(rows, name));
}
