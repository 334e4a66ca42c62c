/**
 * The table of a class's scores: what is typed, what each row comes to, and what of a pasted table goes where.
 * Units: counts of right answers.
 */
import type { TwoScores } from '../../core/summary.ts';
import { type Limits, type Whole, wholeIn } from '../kit/whole.ts';

/** A learner's row, as typed. */
export interface Row {
  readonly before: string;
  readonly after: string;
}
export type Column = keyof Row;

const EMPTY: Row = { before: '', after: '' };
const MOST_ROWS = 60;
const MOST_LETTERS = 24;

/** Rows that are there before anyone types, one for each learner. */
export const startingRows = (learners: number): readonly Row[] =>
  Array.from({ length: learners }, () => EMPTY);

const isUsed = ({ before, after }: Row): boolean => before.trim() !== '' || after.trim() !== '';

/** The rows with an empty one at their end, as long as there is room. */
function withSpare(rows: readonly Row[]): readonly Row[] {
  const last = rows.at(-1);
  return rows.length < MOST_ROWS && (!last || isUsed(last)) ? [...rows, EMPTY] : rows;
}

/** The rows with a text put into one of their boxes. */
export const typed = (
  rows: readonly Row[],
  place: number,
  column: Column,
  text: string,
): readonly Row[] =>
  withSpare(rows.map((row, at) => (at === place ? { ...row, [column]: text } : row)));

/** A pasted table in rows and cells; undefined where it is only one cell, which a box takes by itself. */
function cellsOf(text: string): readonly (readonly string[])[] | undefined {
  const lines = text
    .split(/\r\n|\r|\n/)
    .map((line) => line.trim())
    .filter((line) => line !== '');
  const rows = lines.map((line) =>
    line.split(/[\t;,]+|\s{1,}/).map((cell) => cell.trim().slice(0, MOST_LETTERS)),
  );
  return rows.length > 1 || (rows[0]?.length ?? 0) > 1 ? rows : undefined;
}

/** What a pasted row puts into a learner's row: its last two cells, or its one cell into the column where it was pasted. */
function pastedRow(row: Row, cells: readonly string[], column: Column): Row {
  const [last = '', lastButOne] = cells.toReversed();
  return lastButOne === undefined
    ? { ...row, [column]: last }
    : { before: lastButOne, after: last };
}

/** The rows with a table pasted from one of their boxes on; undefined where the text is no table. */
export function pasted(
  rows: readonly Row[],
  place: number,
  column: Column,
  text: string,
): readonly Row[] | undefined {
  const cells = cellsOf(text);
  if (!cells) return undefined;
  const room = cells.slice(0, MOST_ROWS - place);
  const length = Math.max(rows.length, place + room.length);
  const all = Array.from({ length }, (_, at) => {
    const row = rows[at] ?? EMPTY;
    const pastedCells = room[at - place];
    return pastedCells ? pastedRow(row, pastedCells, column) : row;
  });
  return withSpare(all);
}

/** What a row comes to: two scores, one of two, nothing, or what is wrong with each of its boxes. */
export interface ReadRow {
  readonly scores?: TwoScores;
  readonly isHalf?: true;
  readonly troubles: Readonly<Partial<Record<Column, string>>>;
}

/** A row, read; `questions` is how many there were to answer. */
export function readRow(row: Row, questions: number): ReadRow {
  if (!isUsed(row)) return { troubles: {} };
  const limits: Limits = { least: 0, most: questions };
  const read = (text: string): Whole | undefined =>
    text.trim() === '' ? undefined : wholeIn(text, limits);
  const [before, after] = [read(row.before), read(row.after)];
  if (before?.ok && after?.ok) {
    const share = (right: number) => right / questions;
    return { scores: { before: share(before.value), after: share(after.value) }, troubles: {} };
  }
  const troubles = {
    ...(before?.ok === false && { before: before.reason }),
    ...(after?.ok === false && { after: after.reason }),
  };
  return before && after ? { troubles } : { isHalf: true, troubles };
}
