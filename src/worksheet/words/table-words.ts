/** How a pasted table was understood, and what of it was not taken. */
import type { LoadName } from '../../core/worksheet.ts';
import { placedColumns } from '../../form/column-titles.ts';
import type { TextTable } from '../../form/document.ts';
import type { LeftOut } from '../../form/pasting.ts';
import { type FieldPath, fieldAt, type ListPath, mostRows, rowWord } from '../../form/paths.ts';
import type { RowName } from '../../form/series.ts';
import { cellAt } from '../../form/typed.ts';
import { rowsOf } from './taking-words.ts';

/** Runs of numbers as a person says them: 3, 5 to 9. */
function runs(numbers: readonly number[]): string {
  const starts = numbers.filter((each, at) => numbers[at - 1] !== each - 1);
  const ends = numbers.filter((each, at) => numbers[at + 1] !== each + 1);
  return starts
    .map((start, at) => (start === ends[at] ? `${start}` : `${start} to ${ends[at]}`))
    .join(', ');
}

/** What of a paste was not taken, every row by its number. */
export function leftOutSentence({ list, beyond, others }: LeftOut): string {
  const [rows, was] = beyond.length === 1 ? ['Row', 'was'] : ['Rows', 'were'];
  const cells = others === 1 ? 'One cell was' : `${others} cells were`;
  const sentences = [
    beyond.length > 0 &&
      `${rows} ${runs(beyond)} ${was} not taken: the sheet holds ${mostRows(list)} ${rowsOf(list)}.`,
    others > 0 && `${cells} not taken: too long, or without a column here.`,
  ];
  return sentences.filter(Boolean).join(' ');
}

/** That a paste took the place of what stood there, and where; nothing where all its boxes were empty. */
export function replacedSentence(
  start: FieldPath,
  [first, ...others]: readonly number[],
  ofReadings: RowName,
): string {
  if (first === undefined) return '';
  const list = cellAt(start)?.list ?? 'readings';
  const row = list === 'readings' ? ofReadings(first) : `${rowWord(list)} ${first + 1}`;
  const more = others.length === 0 ? '' : ` and ${others.length} more`;
  return `This replaced what stood in ${row}${more}: undo brings it back. To add rows, paste into the first empty one.`;
}

const columnName = (list: ListPath, cell: string): string =>
  fieldAt(`${list}.0.${cell}` as FieldPath).label.toLowerCase();

/** How a pasted table was understood: its rows and columns, and the first of them. */
export function understoodSentence(start: FieldPath, table: TextTable, load: LoadName): string {
  const at = cellAt(start);
  if (!at) return '';
  const { columns, rows, areTitled } = placedColumns(at.list, at.cell, table, load);
  const widest = Math.max(...rows.map((row) => row.length));
  const taken = columns.slice(0, widest).flatMap((cell, place) => (cell ? [{ cell, place }] : []));
  const names = taken.map(({ cell }) => columnName(at.list, cell)).join(', ');
  const first = taken.map(({ place }) => rows[0]?.[place] || 'nothing').join(', ');
  const count = rows.length === 1 ? 'one row' : `${rows.length} rows`;
  const titles = areTitled ? 'under a line of titles' : 'without a line of titles';
  return `Understood: ${count}, ${titles}. Columns: ${names}. The first row: ${first}. Not so? Undo takes all of it back.`;
}
