/**
 * The parts of the form that repeat.
 * Units: none. Source: definition.
 */

/** A part of the form that repeats: the most rows it may have, what it is called, and what a row with a number is. */
export interface List {
  readonly most: number;
  readonly label: string;
  readonly row?: string;
}

/** The parts of the form that repeat. */
export const LISTS = {
  readings: { most: 2000, label: 'readings', row: 'row' },
  ways: { most: 12, label: 'ways of setting' },
  log: { most: 500, label: 'log entries', row: 'entry' },
  bands: { most: 12, label: 'other bands' },
  'ways.*.readings': { most: 12, label: 'readings of its own', row: 'reading' },
} as const satisfies Readonly<Record<string, List>>;

/** Columns that are written down only where something stands in one of their cells. */
export const IF_FILLED: readonly string[] = ['pressure'];

/** Cells of a row that are no columns to type down: a table brings them only under a title of theirs. */
export const BESIDE_THE_COLUMNS: readonly string[] = ['series', 'struck'];
