/**
 * The lesson page comes alive: finds its model, reads the link, makes the store, starts the elements.
 * A page without a model, or whose model does not load, stays the page that was built.
 */
import type { Model } from '../models/define-model.ts';
import { readLink } from './link.ts';
import { keepLink } from './link-keeper.ts';
import { createPageStore, type PageStore } from './store.ts';

const modules = import.meta.glob<Record<string, unknown>>('../lessons/*/model.ts');

async function loadModel(name: string): Promise<Model | undefined> {
  const loaded = await modules[`../lessons/${name}/model.ts`]?.();
  return Object.values(loaded ?? {}).find(
    (value): value is Model => typeof value === 'object' && (value as Model | null)?.name === name,
  );
}

/** Starts the page's store from its model and link; undefined where there is nothing to start. */
export async function startPage(): Promise<PageStore | undefined> {
  const root = document.querySelector<HTMLElement>('[data-model]');
  const model = root && (await loadModel(root.dataset['model'] ?? ''));
  if (!model) return undefined;
  const link = readLink(model, location.hash);
  const store = createPageStore(model, link.inputs);
  keepLink(store, link.refused);
  return store;
}
