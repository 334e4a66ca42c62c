/**
 * The lesson page comes alive: takes its model, reads the link, makes the store.
 * A page without a lesson stays the page that was built.
 */
import { lessonOnPage } from '../models/on-page.ts';
import { keepLink, linkInAddress } from './link-keeper.ts';
import { createPageStore, type PageStore } from './store.ts';

/** Starts the page's store from its model and link; undefined where there is nothing to start. */
export function startPage(): PageStore | undefined {
  const model = lessonOnPage()?.model;
  if (!model) return undefined;
  const link = linkInAddress(model);
  const store = createPageStore(model, link.inputs);
  keepLink(store, link.refused);
  return store;
}
