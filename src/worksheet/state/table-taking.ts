/** Takes pasted tables into the lists of the sheet, and says how they were understood. Fetched with the first of them. */
import { pastedTable } from '../../form/pasted-table.ts';
import { leftOut, placedTexts } from '../../form/pasting.ts';
import { cellsOf, type FieldPath, type ListPath } from '../../form/paths.ts';
import { leftOutSentence, understoodSentence } from '../words/table-words.ts';
import type { Taker } from './taking.ts';

/** Takes a table in from a cell on; false where the text is one cell alone. */
export function takeTable(path: FieldPath, text: string, { run, tell, shown }: Taker): boolean {
  const load = shown().load.name;
  const cells = pastedTable(text);
  if (cells.length < 2 && (cells[0]?.length ?? 0) < 2) return false;
  const left = leftOut(path, cells, load);
  run({ do: 'fill', path, texts: placedTexts(path, cells, load) });
  const says = [understoodSentence(path, cells, load), left && leftOutSentence(left)];
  tell({ path, says: says.filter(Boolean).join(' '), text: left?.text ?? '' });
  return true;
}

/** Takes the text of a file into a list, behind what stands there. */
export function takeText(list: ListPath, text: string, taker: Taker): void {
  takeTable(`${list}.${taker.cells(list).length}.${cellsOf(list)[0]}` as FieldPath, text, taker);
}
