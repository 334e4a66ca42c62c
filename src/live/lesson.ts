/** The script of a lesson page: the store first, then the elements that bind to it. */
import { announceLive } from './announce.ts';
import { defineElements } from './define-elements.ts';
import { provideStore } from './elements/store-element.ts';
import { keepPlace } from './kept-place.ts';
import { startPage } from './page.ts';

const store = startPage();
if (store) {
  provideStore(store);
  defineElements();
  keepPlace(store.model.name);
}
announceLive();
