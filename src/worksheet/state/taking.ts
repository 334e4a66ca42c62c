/**
 * What boxes take of what is pasted, dropped or typed into them. Several cells fill a table from there on; what a box
 * cannot hold as it is, it does not take at all, and that is told beside it: nothing is cut or joined without a word.
 */

import { type FieldPath, fieldAt, isFieldPath, rowWord } from '../../form/paths.ts';
import { cellAt } from '../../form/typed.ts';
import { NOTICES } from '../words/notices.ts';
import { SEVERAL_LINES, tooLong } from '../words/taking-words.ts';
import type { SheetView } from './view.ts';

/** Whoever takes what is pasted. */
export type Taker = Pick<SheetView, 'run' | 'tell' | 'cells' | 'shown'>;

const BREAK = String.raw`\t\n\r\v\f\u0085\u2028\u2029`;
const MAY_BE_CELLS = new RegExp(`[${BREAK};]|[\\d.][ ,]+\\S`);
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

/** Refuses what a box cannot hold; false where it can. */
function isRefused({ box, path }: SheetBox, pasted: string, { tell }: Taker): boolean {
  const isSeveral = SEVERAL.test(pasted);
  if (!isSeveral && !isTooLong(box, pasted.trim())) return false;
  tell({ path, says: isSeveral ? SEVERAL_LINES : tooLong(fieldAt(path)), text: pasted });
  return true;
}

/** Whether a text may be more than one cell of a list: that is looked into by what comes with the first such paste. */
function mayBeTable(path: FieldPath, pasted: string): boolean {
  const list = cellAt(path)?.list;
  return list !== undefined && rowWord(list) !== undefined && MAY_BE_CELLS.test(pasted);
}

/** Takes a table in, or the text as it would have been typed. */
async function takeLater(at: SheetBox, pasted: string, taker: Taker): Promise<void> {
  const { box, path } = at;
  const [start, end] = [box.selectionStart ?? 0, box.selectionEnd ?? 0];
  try {
    const { takeTable } = await import('./table-taking.ts');
    if (takeTable(path, pasted, taker) || isRefused(at, pasted, taker)) return;
    const text = box.value.slice(0, start) + pasted.trim() + box.value.slice(end);
    taker.run({ do: 'type', path, text });
  } catch {
    taker.tell({ path, says: NOTICES.notArrived, text: pasted });
  }
}

/** Takes what is pasted; false where the browser may go on. */
function isTakenOver(at: SheetBox, pasted: string, taker: Taker): boolean {
  if (!mayBeTable(at.path, pasted)) return isRefused(at, pasted, taker);
  void takeLater(at, pasted, taker);
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
