/**
 * Where pasted cells go: from one cell of a list on, to the right and down, or as a first row of titles says. What
 * finds no box, or does not fit into its box, is named, so that nothing is dropped without a word.
 * Units: none.
 * Source: definition.
 */
import type { LoadName } from '../core/worksheet.ts';
import { placedColumns } from './column-titles.ts';
import { mostLetters } from './field.ts';
import { type FieldPath, findField, type ListPath, mostRows } from './paths.ts';
import { cellAt } from './typed.ts';

type Cells = readonly (readonly string[])[];

interface PlacedCell {
  readonly row: number;
  readonly path: string;
  readonly text: string;
}

/** What of a paste was not taken: rows beyond the list, by their numbers from 1 on; how many other cells; their text. */
export interface LeftOut {
  readonly list: ListPath;
  readonly beyond: readonly number[];
  readonly others: number;
  readonly text: string;
}

function placed(path: FieldPath, rows: Cells, load?: LoadName): readonly PlacedCell[] {
  const start = cellAt(path);
  if (!start) return [];
  const { columns, rows: cellsOfRows } = placedColumns(start.list, start.cell, rows, load);
  return cellsOfRows.flatMap((cells, down) =>
    cells.map((text, right) => {
      const row = start.row + down;
      return { row, path: `${start.list}.${row}.${columns[right] ?? ''}`, text };
    }),
  );
}

/** Whether a text stands in its box as it is: a line break would vanish there, and join what it parts. */
function fits({ path, text }: PlacedCell): boolean {
  const field = findField(path);
  return field !== undefined && text.length <= mostLetters(field) && !/[\r\n]/.test(text);
}

/** The texts of the boxes that rows of cells go into, from one cell on; what does not fit is left out. */
export const placedTexts = (
  path: FieldPath,
  rows: Cells,
  load?: LoadName,
): readonly (readonly [path: string, text: string])[] =>
  placed(path, rows, load)
    .filter(fits)
    .map((cell) => [cell.path, cell.text]);

/** The rows, counted from 0, in which a paste puts something else into a box that is filled. */
export function replacedRows(
  texts: readonly (readonly [path: string, text: string])[],
  standsAt: (path: string) => string,
): readonly number[] {
  const replaced = texts.filter(([path, text]) => !['', text].includes(standsAt(path)));
  const rows = replaced.flatMap(([path]) => cellAt(path)?.row ?? []);
  return [...new Set(rows)].sort((a, b) => a - b);
}

/** What of a paste is left out; undefined where all of it is taken. */
export function leftOut(path: FieldPath, rows: Cells, load?: LoadName): LeftOut | undefined {
  const list = cellAt(path)?.list;
  const left = placed(path, rows, load).filter((cell) => cell.text !== '' && !fits(cell));
  if (!list || left.length === 0) return undefined;
  const byRow = new Map<number, string[]>();
  for (const { row, text } of left) byRow.set(row, [...(byRow.get(row) ?? []), text]);
  return {
    list,
    beyond: [...byRow.keys()].filter((row) => row >= mostRows(list)).map((row) => row + 1),
    others: left.filter(({ row }) => row < mostRows(list)).length,
    text: [...byRow.values()].map((cells) => cells.join('\t')).join('\n'),
  };
}
