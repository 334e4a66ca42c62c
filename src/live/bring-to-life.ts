/** Brings what the build wrote to life: the page's store first, then the elements that bind to it. */
import { defineElements } from './define-elements.ts';
import { provideStore } from './elements/store-element.ts';
import type { PageStore } from './store.ts';

/** Resolves once everything on the page answers to the store. */
export async function bringToLife(store: PageStore): Promise<void> {
  provideStore(store);
  defineElements();
  if (document.querySelector('live-part')) await import('./elements/part.ts');
}
