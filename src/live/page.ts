/**
 * A live page starts: takes its model, reads the link where there is one, makes the store. What keeps the address comes
 * with the first link or the first change. A page without a lesson stays the page that was built.
 */
import { effect, signal } from '@preact/signals-core';
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

/** Starts the page's store from its model and link; undefined where there is nothing to start. */
export async function startPage(): Promise<PageStore | undefined> {
  const model = lessonOnPage()?.model;
  if (!model) return undefined;
  const keeper = location.hash === '' ? undefined : await fetchKeeper().catch(() => undefined);
  const link = keeper?.linkInAddress(model);
  const store = createPageStore(model, link?.inputs ?? {});
  if (link) keeper?.keepLink(store, link.refused);
  else keepLinkLater(store);
  return store;
}
