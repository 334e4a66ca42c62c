/**
 * A live page starts: takes its model, reads the link where there is one, makes the store. What keeps the address comes
 * with the first link or the first change. A page without a lesson stays the page that was built.
 */
import { effect, signal } from '@preact/signals-core';
import type { Values } from '../models/define-model.ts';
import { lessonOnPage } from '../models/on-page.ts';
import { createPageStore, type PageStore } from './store.ts';

const fetchKeeper = () => import('./link-keeper.ts');

/** Keeps the address from the first change on, and opens links typed into it. */
function keepLinkLater(store: PageStore): void {
  const opened = store.settled.peek();
  const isDue = signal(false);
  effect(() => {
    if (store.settled.value !== opened) isDue.value = true;
  });
  addEventListener('hashchange', () => {
    isDue.value = true;
  });
  effect(() => {
    if (isDue.value) void fetchKeeper().then((keeper) => keeper.keepLink(store, undefined, opened));
  });
}

/** What the page itself sets, as the build wrote it; nothing on a lesson's. */
function ownInputs(): Values {
  const text = document.querySelector<HTMLElement>('[data-start]')?.dataset['start'];
  return text === undefined ? {} : (JSON.parse(text) as Values);
}

/** Starts the page's store from its model and link; undefined where there is nothing to start. */
export async function startPage(): Promise<PageStore | undefined> {
  const model = lessonOnPage()?.model;
  if (!model) return undefined;
  const keeper = location.hash === '' ? undefined : await fetchKeeper().catch(() => undefined);
  const link = keeper?.linkInAddress(model);
  const store = createPageStore(model, link?.inputs ?? {}, ownInputs());
  if (link) keeper?.keepLink(store, link.refused);
  else keepLinkLater(store);
  return store;
}
