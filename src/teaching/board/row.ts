/**
 * What stands on the board: one row for each sheet, and what was left out.
 * Units: SI (Pa, N·m, m); efficiency has no unit.
 * Source: definition.
 */
import type { UnitSystem } from '../../units/kinds.ts';

/** The most that is taken: more than any class, and little enough that no browser stands still. */
export const MOST = { sheets: 60, atOnce: 200, letters: 40 } as const;

/** A result with its 95 % interval, and the standard uncertainty that the learner's own readings give it. */
export interface Measured {
  readonly value: number;
  readonly expanded: number;
  readonly own: number;
}

/** What a result waits for, in words. */
export interface Waits {
  readonly waits: Readonly<Record<UnitSystem, string>>;
}

/** A sheet as it was read, before it has a name of its own. */
export interface ReadSheet {
  readonly label: string;
  readonly from: string; // the file or link that it came with
  readonly verdict: string; // in words, after “the measurement is”
  readonly stress: Measured | Waits; // Pa, at the top torque
  readonly efficiency: Measured | Waits;
  readonly topTorque?: number | undefined; // N·m
  readonly lead?: number | undefined; // m, of the screw
}

/** A sheet on the board. */
export interface Row extends ReadSheet {
  readonly id: number;
  readonly name: string; // no other row has it
}

/** A row whose stress is there. */
export type MeasuredRow = Row & { readonly stress: Measured; readonly topTorque: number };

/** Something that could not be put on the board, and why. */
export interface LeftOut {
  readonly from: string;
  readonly why: string;
}

/** The board at one moment. */
export interface Board {
  readonly rows: readonly Row[];
  readonly leftOut: readonly LeftOut[];
}

/** A board with nothing on it. */
export const EMPTY: Board = { rows: [], leftOut: [] };

/** Whether a result is there. */
export const isMeasured = (result: Measured | Waits): result is Measured => 'value' in result;

/** The rows that the chart shows, from the lowest stress to the highest. */
export const measuredRows = ({ rows }: Pick<Board, 'rows'>): readonly MeasuredRow[] =>
  rows
    .filter((row): row is MeasuredRow => isMeasured(row.stress) && row.topTorque !== undefined)
    .toSorted((a, b) => a.stress.value - b.stress.value);

/** The rows in the order of the table: measured ones by their stress, then those that wait. */
export const rowsInOrder = (board: Pick<Board, 'rows'>): readonly Row[] => [
  ...measuredRows(board),
  ...board.rows.filter(({ stress }) => !isMeasured(stress)),
];

/** A name that no other has: “Ann”, then “Ann (2)”. */
export function ownName(label: string, taken: readonly string[]): string {
  const letters = [...label.replace(/[\p{C}\s]+/gu, ' ').trim()];
  const plain = letters.slice(0, MOST.letters).join('').trim() || 'No name';
  for (let count = 2, name = plain; ; name = `${plain} (${count++})`)
    if (!taken.includes(name)) return name;
}

/** The board with one more sheet, if there is room. */
export function withSheet(board: Board, sheet: ReadSheet): Board {
  const { rows } = board;
  if (rows.length >= MOST.sheets) return board;
  const id = Math.max(0, ...rows.map((row) => row.id)) + 1;
  const name = ownName(
    sheet.label,
    rows.map((row) => row.name),
  );
  return { ...board, rows: [...rows, { ...sheet, id, name }] };
}
