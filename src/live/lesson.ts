/** The script of a lesson page and of a worked example: the store first, then the elements that bind to it. */
import { announceLive } from './announce.ts';
import { defineElements } from './define-elements.ts';
import { provideStore } from './elements/store-element.ts';
import { startPage } from './page.ts';
import type { PageStore } from './store.ts';

async function live(store: PageStore | undefined): Promise<void> {
  if (store) {
    provideStore(store);
    defineElements();
    const { name } = store.model;
    const keep = () => import('./kept-place.ts').then(({ keepPlace }) => keepPlace(name));
    if (document.querySelector('live-part')) await import('./elements/part.ts');
    addEventListener('scroll', () => void keep(), { once: true }); // opened, once the reader goes on in it
  }
  announceLive();
}

void startPage().then(live);
