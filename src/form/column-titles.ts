/**
 * A line of titles over pasted readings: which column each title names, and the unit it gives to the bare numbers
 * under it. A table without such a line goes in as it stands.
 * Units: as typed.
 * Source: definition; the words are common practice, no source.
 */
import { parseQuantity } from '../units/reading/parse-quantity.ts';
import { cellsOf, findField, type ListPath } from './paths.ts';
import { isBareNumber } from './units.ts';

type Table = readonly (readonly string[])[];

const TITLES: readonly (readonly [cell: string, title: RegExp])[] = [
  ['date', /date|day|when/i],
  ['note', /note|remark|seen|\bby\b/i],
  ['wholeTurns', /whole|of the hand|\bhand\b|revolution|counter/i],
  ['turns', /turn|screw|handle/i],
  ['series', /series|\brun\b/i],
  ['struck', /note|remark|struck|why/i],
  ['torque', /torque|moment|wrench|n.?m\b|ft.?lb|in.?lb/i],
  ['dial', /dial|indicator|gauge|reading|clock|stretch|\bmm\b|\bin\b|inch|thou/i],
];

/** What a table says under its titles. */
export interface Titled {
  /** The cell of a row that each column names; undefined for a column that the list does not have. */
  readonly columns: readonly (string | undefined)[];
  readonly rows: Table;
}

const hasNumber = (cells: readonly string[]) => cells.some((cell) => /^[+\-−]?[\d.,]/.test(cell));

/** The unit in brackets, or at the end of a title, where it can be one of that box. */
function unitIn(title: string, path: string): string {
  const field = findField(path);
  const [, unit = ''] =
    /[([]\s*([^)\]]+?)\s*[)\]]\s*$/.exec(title) ?? /[\s,/]([^\s,/]+)\s*$/.exec(title) ?? [];
  const isUnit =
    field && 'kind' in field && unit !== '' && parseQuantity(`1 ${unit}`, field.kind, 'metric').ok;
  return isUnit ? ` ${unit}` : '';
}

/** The table under its titles, its columns named; undefined where its first line is none of titles. */
export function titled(list: ListPath, table: Table): Titled | undefined {
  const [titles = [], ...rows] = table;
  if (rows.length === 0 || hasNumber(titles)) return undefined;
  const known = cellsOf(list);
  const columns = titles.map(
    (title) => TITLES.find(([cell, words]) => known.includes(cell) && words.test(title))?.[0],
  );
  const units = titles.map((title, at) => unitIn(title, `${list}.0.${columns[at]}`));
  const withUnits = rows.map((cells) =>
    cells.map((cell, at) => (isBareNumber(cell) ? `${cell}${units[at] ?? ''}` : cell)),
  );
  return { columns, rows: withUnits };
}

/** Rows brought into the order of the list's cells; where a column is not named, what stands there stays. */
export function inListOrder(list: ListPath, { columns, rows }: Titled, before: Table): Table {
  const cells = cellsOf(list);
  return rows.map((row, down) =>
    cells.map((cell, at) => {
      const column = columns.indexOf(cell);
      return (column < 0 ? before[down]?.[at] : row[column]) ?? '';
    }),
  );
}
