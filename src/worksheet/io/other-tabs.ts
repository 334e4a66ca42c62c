/** The same sheets in another tab: what is kept there is taken in here, and told. */
import type { Signal } from '@preact/signals-core';
import { type SheetStore, takeIn } from '../state/store.ts';
import { NOTICES } from '../words/notices.ts';
import { fromShelf } from './outside.ts';

/** Takes in one entry of the browser's store that another tab has written. */
export function takeEntry(store: SheetStore, said: Signal<string>, key: string | null): void {
  const id = store.shelf.idOfKey(key);
  const entry = store.shelf.entries().find((each) => each.id === id);
  if (!entry) return;
  const document = fromShelf([entry]).sheets.get(entry.id);
  const outcome = document && takeIn(store, entry.id, document);
  if (outcome) said.value = NOTICES[outcome];
}

/** Follows the browser's store; a sheet removed elsewhere stays on this table until the page is left. */
export function followOtherTabs(store: SheetStore, said: Signal<string>): void {
  addEventListener('storage', ({ key, newValue }) => {
    if (newValue !== null) takeEntry(store, said, key);
  });
}
