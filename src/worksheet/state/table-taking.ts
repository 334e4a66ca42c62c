/** Takes pasted tables into the lists of the sheet, and says how they were understood. Fetched with the first of them. */
import { pastedTable } from '../../form/pasted-table.ts';
import { leftOut, placedTexts, replacedRows } from '../../form/pasting.ts';
import { cellsOf, type FieldPath, type ListPath } from '../../form/paths.ts';
import { cellAt } from '../../form/typed.ts';
import { leftOutSentence, replacedSentence, understoodSentence } from '../words/table-words.ts';
import type { Taker } from './taking.ts';

/** What stands in the boxes of the list that a path is in. */
function textsOf(path: FieldPath, { cells }: Pick<Taker, 'cells'>): (path: string) => string {
  const list = cellAt(path)?.list;
  const [rows, columns] = list ? [cells(list), cellsOf(list)] : [[], []];
  return (other) => {
    const at = cellAt(other);
    return rows[at?.row ?? 0]?.[columns.indexOf(at?.cell ?? '')] ?? '';
  };
}

/** Takes a table in from a cell on; false where the text is one cell alone. */
export function takeTable(path: FieldPath, text: string, taker: Taker): boolean {
  const { run, tell, shown } = taker;
  const load = shown().load.name;
  const cells = pastedTable(text);
  if (cells.length < 2 && (cells[0]?.length ?? 0) < 2) return false;
  const left = leftOut(path, cells, load);
  const texts = placedTexts(path, cells, load);
  const replaced = replacedRows(texts, textsOf(path, taker));
  run({ do: 'fill', path, texts });
  const says = [
    replacedSentence(path, replaced, shown().row),
    understoodSentence(path, cells, load),
    left && leftOutSentence(left),
  ];
  tell({ path, says: says.filter(Boolean).join(' '), text: left?.text ?? '' });
  return true;
}

/** Takes the text of a file into a list, behind what stands there. */
export function takeText(list: ListPath, text: string, taker: Taker): void {
  takeTable(`${list}.${taker.cells(list).length}.${cellsOf(list)[0]}` as FieldPath, text, taker);
}
