/**
 * What boxes take of what is pasted, dropped or typed into them. Several cells fill a table from there on; what a box
 * cannot hold as it is, it does not take at all, and that is told beside it: nothing is cut or joined without a word.
 */

import type { TextTable } from '../../form/document.ts';
import { pastedTable } from '../../form/pasted-table.ts';
import { leftOut } from '../../form/pasting.ts';
import {
  cellsOf,
  type FieldPath,
  fieldAt,
  isFieldPath,
  type ListPath,
  rowWord,
} from '../../form/paths.ts';
import { cellAt } from '../../form/typed.ts';
import {
  leftOutSentence,
  SEVERAL_LINES,
  tooLong,
  understoodSentence,
} from '../words/taking-words.ts';
import type { SheetView } from './view.ts';

type Taker = Pick<SheetView, 'run' | 'tell' | 'cells'>;

const BREAK = String.raw`\t\n\r\v\f\u0085\u2028\u2029`;
const SEVERAL = new RegExp(`\\S[^${BREAK}]*[${BREAK}]\\s*\\S`);

/** The box of the sheet that an event is about, with its path. */
export function boxOf({ target }: Event) {
  const isBox = target instanceof HTMLInputElement && target.type === 'text';
  const path = isBox ? (target.dataset['path'] ?? '') : '';
  return isBox && isFieldPath(path) ? { box: target, path } : undefined;
}

type SheetBox = NonNullable<ReturnType<typeof boxOf>>;

function isTooLong(box: HTMLInputElement, added: string): boolean {
  const marked = (box.selectionEnd ?? 0) - (box.selectionStart ?? 0);
  return box.value.length - marked + added.length > box.maxLength;
}

/** Takes a table in from a cell on, and says how it was understood. */
function takeTable(path: FieldPath, cells: TextTable, { run, tell }: Taker): void {
  const left = leftOut(path, cells);
  run({ do: 'paste', path, cells });
  const says = [understoodSentence(path, cells), left && leftOutSentence(left)];
  tell({ path, says: says.filter(Boolean).join(' '), text: left?.text ?? '' });
}

/** Takes the text of a file into a list, behind what stands there. */
export function takeText(list: ListPath, text: string, taker: Taker): void {
  const row = taker.cells(list).length;
  takeTable(`${list}.${row}.${cellsOf(list)[0]}` as FieldPath, pastedTable(text), taker);
}

/** Takes several cells into a table, or refuses what a box cannot hold; false where the browser may go on. */
function isTakenOver({ box, path }: SheetBox, pasted: string, taker: Taker): boolean {
  const list = cellAt(path)?.list;
  const table = list && rowWord(list) ? pastedTable(pasted) : [];
  if (list && (table.length > 1 || (table[0]?.length ?? 0) > 1)) {
    takeTable(path, table, taker);
    return true;
  }
  const isSeveral = SEVERAL.test(pasted);
  if (!isSeveral && !isTooLong(box, pasted.trim())) return false;
  taker.tell({ path, says: isSeveral ? SEVERAL_LINES : tooLong(fieldAt(path)), text: pasted });
  return true;
}

/** Binds pasting, dropping and typing for every box under `root`, also those that come later. */
export function bindTaking(root: HTMLElement, sheet: Taker): void {
  const bring = (event: Event, data: DataTransfer | null) => {
    const at = boxOf(event);
    if (at && isTakenOver(at, data?.getData('text/plain') ?? '', sheet)) event.preventDefault();
  };
  root.addEventListener('paste', (event) => bring(event, event.clipboardData));
  root.addEventListener('drop', (event) => bring(event, event.dataTransfer));
  root.addEventListener('beforeinput', (event) => {
    const at = boxOf(event);
    if (!at || event.inputType !== 'insertText' || !isTooLong(at.box, event.data ?? '')) return;
    event.preventDefault();
    sheet.tell({ path: at.path, says: tooLong(fieldAt(at.path)), text: '' });
  });
}
