/** The script of a lesson page: the store first, then the elements that bind to it. */
import { announceLive } from './announce.ts';
import { provideStore } from './elements/store-element.ts';
import { startPage } from './page.ts';

const store = await startPage();
if (store) {
  provideStore(store);
  await import('./define-elements.ts');
}
announceLive();
