/**
 * Undo and redo everywhere on the sheet: by key, by the browser's own menu, by button. The sheet's own history stands
 * in for the browser's, which knows nothing of pasted tables and forgets a box that is drawn anew.
 */
import type { Signal } from '@preact/signals-core';
import { rowNamer, seriesStarts } from '../../form/series.ts';
import { chosenAt, typedAt } from '../../form/typed.ts';
import { reveal } from '../folds/revealing.ts';
import { idOf } from '../kit/ids.ts';
import type { Command } from './project.ts';
import { type SheetStore, settle, step } from './store.ts';

type Way = 'undo' | 'redo';

function boxOf(page: Document, command: Command): HTMLInputElement | null {
  if (!('path' in command)) return null;
  const option = `input[name="choice-${command.path}"]`;
  const chosen = `#${idOf(command.path)}, ${option}:checked`;
  return page.querySelector<HTMLInputElement>(chosen) ?? page.querySelector(option); // none may be chosen
}

function textOf({ project }: SheetStore, command: Command): string {
  const { typed } = project.value;
  if (command.do === 'choose') return chosenAt(typed, command.path);
  return command.do === 'type' ? typedAt(typed, command.path) : '';
}

/** Brings what is said of a step. */
export const fetchUndoWords = () => import('../words/undo-words.ts');

/** Goes one step back or on, says so, and puts the focus where it happened. */
export function go(store: SheetStore, spoken: Signal<string>, page: Document, way: Way): void {
  const command = step(store, way);
  if (!command) return;
  const text = textOf(store, command);
  const ofReadings = rowNamer(seriesStarts(store.project.value.typed));
  fetchUndoWords().then(
    ({ stepSentence }) => {
      spoken.value = stepSentence(way, command, text, ofReadings);
    },
    () => {}, // where it does not come, the box that has the focus says it
  );
  setTimeout(() => {
    const box = boxOf(page, command); // once it is drawn
    reveal(box);
    box?.focus();
  });
}

/** What the keys ask for, where they ask for one of the two. */
export function wayOf({
  key,
  ctrlKey,
  metaKey,
  shiftKey,
  altKey,
}: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'shiftKey' | 'altKey'>): Way | undefined {
  if (altKey || (!ctrlKey && !metaKey)) return undefined;
  const letter = key.toLowerCase();
  if (letter === 'z') return shiftKey ? 'redo' : 'undo';
  return letter === 'y' && ctrlKey && !shiftKey ? 'redo' : undefined;
}

const MENU: Readonly<Record<string, Way>> = { historyUndo: 'undo', historyRedo: 'redo' };

/** Whether a box of its own, outside the sheet, is being typed into. */
const isElsewhere = (target: EventTarget | null): boolean =>
  target instanceof HTMLInputElement && target.type === 'text' && !target.dataset['path'];

/** Binds keys and menu for the whole page, and ends a step when its box is left. */
export function bindUndo(store: SheetStore, spoken: Signal<string>, page: Document): void {
  const take = (event: Event, way: Way | undefined) => {
    if (!way || isElsewhere(event.target)) return;
    event.preventDefault();
    go(store, spoken, page, way);
  };
  page.addEventListener('keydown', (event) => take(event, wayOf(event)));
  page.addEventListener('beforeinput', (event) => take(event, MENU[event.inputType]));
  page.addEventListener('focusout', () => settle(store));
}
