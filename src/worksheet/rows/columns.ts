/**
 * The columns of the readings' table, and which of them are wanted: the torque or the pressure, whichever tightens; whole
 * turns of the hand and turns of the screw only for who notes them.
 */
import type { LoadName } from '../../core/worksheet.ts';
import { type BoxPath, type CellOf, cellsOf, type FieldPath } from '../../form/paths.ts';
import type { SheetView } from '../state/view.ts';

type Cell = CellOf<'readings'>;

/** A column: its cell, its title, and the kind of its unit where it has one. */
export type Column = readonly [name: Cell, title: string, kind: LoadName | 'stretch' | undefined];

const COLUMNS: readonly Column[] = [
  ['torque', 'Torque', 'torque'],
  ['pressure', 'Pressure', 'pressure'],
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

/** Writes texts into one column, row by row, and what goes with them, in one step that can be undone. */
export function fillColumn(
  sheet: Pick<SheetView, 'run'>,
  name: Cell,
  rows: readonly (readonly [row: number, text: string])[],
  others: readonly (readonly [path: FieldPath, text: string])[] = [],
): void {
  const texts = rows.map(([row, text]) => [pathOf(row, name), text] as const);
  sheet.run({ do: 'fill', path: pathOf(rows[0]?.[0] ?? 0, name), texts: [...texts, ...others] });
}

/** The paths of everything in a row. */
export const pathsOf = (row: number): readonly BoxPath[] =>
  CELLS.map((name) => pathOf(row, name as Cell));

/** Whether anything has been read at a row: the number of its series alone is no reading. */
export const isFilled = (texts: readonly string[]): boolean =>
  COLUMNS.some(([name]) => cellIn(texts, name) !== '');

/** Whether something stands in a column. */
export const isInUse = (rows: readonly (readonly string[])[], name: Cell): boolean =>
  rows.some((texts) => cellIn(texts, name) !== '');

type Asked = Pick<SheetView, 'cells' | 'chosen' | 'isLive' | 'shown' | 'withTurns'>;

/** The columns to be shown; all but the pressures on the form as it is built and printed blank. */
export function columnsOf(sheet: Asked): readonly Column[] {
  const { cells, chosen, isLive, shown, withTurns } = sheet;
  const rows = cells('readings');
  const isScrew = shown().load.name === 'torque';
  const wanted: Partial<Readonly<Record<Cell, boolean>>> = {
    wholeTurns: chosen('rig.dialWritten') !== 'together',
    turns: withTurns.value && isScrew,
  };
  const other = isScrew ? 'pressure' : 'torque';
  const isMeant = (name: Cell) => name !== other && (isScrew || name !== 'turns');
  return COLUMNS.filter(
    ([name]) => isMeant(name) && (!isLive() || (wanted[name] ?? true) || isInUse(rows, name)),
  );
}
