/** The script of a lesson page: the store first, then the elements that bind to it. */
import { announceLive } from './announce.ts';
import { startPage } from './page.ts';
import { provideStore } from './store-element.ts';

const store = await startPage();
if (store) {
  provideStore(store);
  await import('./elements.ts');
}
announceLive();
