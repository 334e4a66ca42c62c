/**
 * Keys on the sheet. Enter goes on: in a table to the same column of the next row, elsewhere to the next box, so that
 * a gauge that types a number and Enter fills a column. Up and down arrows move along a column. Where there is no next
 * box, what a gauge types on is not taken: its numbers must not join.
 */

import { BESIDE_THE_COLUMNS } from '../../form/lists.ts';
import { isFieldPath, rowWord } from '../../form/paths.ts';
import { cellAt } from '../../form/typed.ts';
import { blockOf, unfold } from '../folds/blocks.ts';
import { reveal } from '../folds/revealing.ts';
import { LAST_BOX, listIsFull } from '../words/taking-words.ts';
import { boxOf } from './taking.ts';
import type { NotTaken, SheetView } from './view.ts';

/** The boxes in their order, but for those that few people need and that are folded away. */
function boxesIn(root: HTMLElement): readonly HTMLInputElement[] {
  const boxes = [...root.querySelectorAll<HTMLInputElement>('input[data-path]')];
  return boxes.filter((box) => !box.closest('details.seldom:not([open])'));
}

/** The path so many rows further on in the same column; undefined outside a table or above its first row. */
export function pathInColumn(path: string, rows: number): string | undefined {
  const at = cellAt(path);
  if (!at || !rowWord(at.list) || BESIDE_THE_COLUMNS.includes(at.cell)) return undefined;
  const row = at.row + rows;
  return row < 0 ? undefined : `${at.list}.${row}.${at.cell}`;
}

const pathAfter = (path: string, key: string) => pathInColumn(path, key === 'ArrowUp' ? -1 : 1);

function target(root: HTMLElement, box: HTMLInputElement, key: string) {
  const path = box.dataset['path'] ?? '';
  const all = boxesIn(root);
  const next = pathAfter(path, key);
  if (next !== undefined) return all.find((each) => each.dataset['path'] === next);
  return key === 'Enter' ? all[all.indexOf(box) + 1] : undefined;
}

function goTo(box: HTMLInputElement): void {
  reveal(box);
  box.focus();
  box.select();
}

/** Goes to a row that is folded away, as soon as it is drawn; false where there is none. */
function wentToFolded(root: HTMLElement, sheet: Pick<SheetView, 'unfolded'>, path = ''): boolean {
  const block = blockOf(cellAt(path)?.row ?? 0);
  const isFolded = [...root.querySelectorAll<HTMLElement>('[data-folded]')].some(
    ({ dataset: { folded, foldedTo } }) => Number(folded) <= block && block <= Number(foldedTo),
  );
  if (!isFolded) return false;
  unfold(sheet, block);
  queueMicrotask(() => {
    const box = boxesIn(root).find((each) => each.dataset['path'] === path);
    if (box) goTo(box);
  });
  return true;
}

/** What is said where nothing comes after a box; undefined where a row is only not there yet. */
function endAt(path: string): NotTaken | undefined {
  const next = pathInColumn(path, 1);
  if (next !== undefined && isFieldPath(next)) return undefined;
  const list = next === undefined ? undefined : cellAt(path)?.list;
  return { path, says: list ? listIsFull(list) : LAST_BOX, text: '' };
}

const EDITS = /^(Arrow|Home|End|Backspace|Delete|Escape)/; // keys of someone who mends what stands there

/** Keeps a box at the end from taking more, from Enter on until it is left or its text is mended. */
function bindEnd(root: HTMLElement, sheet: Pick<SheetView, 'tell'>) {
  let ended: HTMLInputElement | undefined;
  const release = () => {
    ended = undefined;
  };
  root.addEventListener('focusout', release);
  root.addEventListener('pointerdown', release);
  root.addEventListener('keydown', ({ key }) => EDITS.test(key) && release());
  root.addEventListener('beforeinput', (event) => {
    if (event.target === ended && event.inputType.startsWith('insert')) event.preventDefault();
  });
  return (box: HTMLInputElement, path: string) => {
    const end = box.value === '' ? undefined : endAt(path);
    if (!end) return;
    ended = box;
    sheet.tell(end);
  };
}

/** Binds the keys for every box under `root`, also those that come later. */
export function bindKeys(root: HTMLElement, sheet: Pick<SheetView, 'tell' | 'unfolded'>): void {
  const endIn = bindEnd(root, sheet);
  root.addEventListener('keydown', (event) => {
    const at = boxOf(event);
    if (!at || !['Enter', 'ArrowUp', 'ArrowDown'].includes(event.key) || event.isComposing) return;
    if (event.key !== 'Enter' && at.box.list) return; // arrows walk the list of threads
    const next = target(root, at.box, event.key);
    if (event.key === 'Enter' || next) event.preventDefault();
    if (next) goTo(next);
    else if (!wentToFolded(root, sheet, pathAfter(at.path, event.key)) && event.key === 'Enter')
      endIn(at.box, at.path);
  });
}
