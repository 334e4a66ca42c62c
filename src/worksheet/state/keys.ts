/**
 * Keys on the sheet. Enter goes on: in a table to the same column of the next row, elsewhere to the next box, so that
 * a gauge that types a number and Enter fills a column. Up and down arrows move along a column.
 */

import { rowWord } from '../../form/paths.ts';
import { cellAt } from '../../form/typed.ts';

function boxesIn(root: HTMLElement): readonly HTMLInputElement[] {
  return [...root.querySelectorAll<HTMLInputElement>('input[data-path]')];
}

/** The path so many rows further on in the same column; undefined outside a table or above its first row. */
export function pathInColumn(path: string, rows: number): string | undefined {
  const at = cellAt(path);
  if (!at || !rowWord(at.list)) return undefined;
  const row = at.row + rows;
  return row < 0 ? undefined : `${at.list}.${row}.${at.cell}`;
}

function target(root: HTMLElement, box: HTMLInputElement, key: string) {
  const path = box.dataset['path'] ?? '';
  const all = boxesIn(root);
  const next = pathInColumn(path, key === 'ArrowUp' ? -1 : 1);
  if (next !== undefined) return all.find((each) => each.dataset['path'] === next);
  return key === 'Enter' ? all[all.indexOf(box) + 1] : undefined;
}

/** Binds the keys for every box under `root`, also those that come later. */
export function bindKeys(root: HTMLElement): void {
  root.addEventListener('keydown', (event) => {
    const box = event.target;
    if (!(box instanceof HTMLInputElement) || box.dataset['path'] === undefined) return;
    if (!['Enter', 'ArrowUp', 'ArrowDown'].includes(event.key) || event.isComposing) return;
    if (event.key !== 'Enter' && box.list) return; // arrows walk the list of threads
    const next = target(root, box, event.key);
    if (event.key === 'Enter' || next) event.preventDefault();
    next?.focus();
    next?.select();
  });
}
