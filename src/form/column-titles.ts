/**
 * A line of titles over pasted readings: which column each title names, and the unit it gives to the bare numbers
 * under it. A table without such a line goes in as it stands.
 * Units: as typed.
 * Source: definition; the words are common practice, no source.
 */
import type { LoadName } from '../core/worksheet.ts';
import { parseQuantity } from '../units/reading/parse-quantity.ts';
import { BESIDE_THE_COLUMNS } from './lists.ts';
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
  ['pressure', /pressure|\bbar\b|\bpsi\b|\bM?Pa\b/i],
  ['dial', /dial|indicator|gauge|reading|clock|stretch|\bmm\b|\bin\b|inch|thou/i],
];

/** Pasted rows, and the cell of a row that each of their columns goes to; undefined for one that the list does not have. */
export interface PlacedColumns {
  readonly columns: readonly (string | undefined)[];
  readonly rows: Table;
  readonly areTitled: boolean;
}

/** The cells of a row, with the torque or the pressure in the torque's place. */
export const columnsWith = (load: LoadName, list: ListPath): readonly string[] =>
  cellsOf(list)
    .filter((name) => name !== 'pressure')
    .map((name) => (name === 'torque' ? load : name));

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

function underTitles(list: ListPath, titles: readonly string[], rows: Table): PlacedColumns {
  const known = cellsOf(list);
  const columns = titles.map(
    (title) => TITLES.find(([cell, words]) => known.includes(cell) && words.test(title))?.[0],
  );
  const units = titles.map((title, at) => unitIn(title, `${list}.0.${columns[at]}`));
  const withUnits = rows.map((cells) =>
    cells.map((cell, at) => (isBareNumber(cell) ? `${cell}${units[at] ?? ''}` : cell)),
  );
  return { columns, rows: withUnits, areTitled: true };
}

/**
 * Where the columns of a table go that is put into a list from one of its cells on: as its titles say, or in order, the
 * torque or the pressure among them, whichever tightens.
 */
export function placedColumns(
  list: ListPath,
  cell: string,
  table: Table,
  load: LoadName = 'torque',
): PlacedColumns {
  const [titles = [], ...rows] = table;
  if (rows.length > 0 && titles.length > 1 && !hasNumber(titles))
    return underTitles(list, titles, rows);
  const plain = columnsWith(load, list).filter(
    (name) => name === cell || !BESIDE_THE_COLUMNS.includes(name),
  );
  return { columns: plain.slice(plain.indexOf(cell)), rows: table, areTitled: false };
}
