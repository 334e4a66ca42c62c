/**
 * What boxes take of what is pasted, dropped or typed into them. Several cells fill a table from there on; what a box
 * cannot hold as it is, it does not take at all, and that is told beside it: nothing is cut or joined without a word.
 */

import { pastedTable } from '../../form/pasted-table.ts';
import { leftOut } from '../../form/pasting.ts';
import { fieldAt, isFieldPath, rowWord } from '../../form/paths.ts';
import { cellAt } from '../../form/typed.ts';
import { leftOutSentence, SEVERAL_LINES, tooLong } from '../words/taking-words.ts';
import type { SheetView } from './view.ts';

type Taker = Pick<SheetView, 'run' | 'tell'>;

const BREAK = String.raw`\t\n\r\v\f\u0085\u2028\u2029`;
const SEVERAL_CELLS = new RegExp(`[${BREAK};]\\s*\\S`); // a single one goes into its box as it is
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

/** Takes several cells into a table, or refuses what a box cannot hold; false where the browser may go on. */
function isTakenOver({ box, path }: SheetBox, pasted: string, { run, tell }: Taker): boolean {
  const list = cellAt(path)?.list;
  if (list && rowWord(list) && SEVERAL_CELLS.test(pasted)) {
    const cells = pastedTable(pasted);
    const left = leftOut(path, cells);
    run({ do: 'paste', path, cells });
    tell(left && { path, says: leftOutSentence(left), text: left.text });
    return true;
  }
  const isSeveral = SEVERAL.test(pasted);
  if (!isSeveral && !isTooLong(box, pasted.trim())) return false;
  tell({ path, says: isSeveral ? SEVERAL_LINES : tooLong(fieldAt(path)), text: pasted });
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
