/**
 * Which column a pasted cell belongs to: as the first row says where it names columns, else one after the other.
 * Units: none.
 * Source: definition.
 */
import { cellsOf, type ListPath } from './paths.ts';

type Cells = readonly (readonly string[])[];

/** What a column of the readings may be called; the first that fits counts. */
const TITLES: readonly (readonly [cell: string, title: RegExp])[] = [
  ['series', /series|run\b|pass\b|round/i],
  ['struck', /struck|strike|reason|note|remark/i],
  ['wholeTurns', /whole|hand\b/i],
  ['torque', /torque|wrench/i],
  ['dial', /dial|indicator|reading/i],
  ['turns', /turn|screw/i],
];

const ONLY_WITH_TITLE: readonly string[] = ['series', 'struck'];
const FEWEST_TITLES = 2;

/** Pasted rows with the name of the cell that each of their columns goes to; undefined where there is none. */
export interface PlacedColumns {
  readonly columns: readonly (string | undefined)[];
  readonly rows: Cells;
}

const titled = (text: string): string | undefined =>
  /^\D*$/.test(text) ? TITLES.find(([, title]) => title.test(text))?.[0] : undefined;

/** The columns of a paste into a list from one of its cells on. */
export function placedColumns(list: ListPath, cell: string, rows: Cells): PlacedColumns {
  const [first = [], ...others] = rows;
  const named = list === 'readings' ? first.map(titled) : [];
  if (new Set(named.filter(Boolean)).size >= FEWEST_TITLES) return { columns: named, rows: others };
  const plain = cellsOf(list).filter((name) => name === cell || !ONLY_WITH_TITLE.includes(name));
  return { columns: plain.slice(plain.indexOf(cell)), rows };
}
