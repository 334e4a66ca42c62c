/** The script of a lesson page: the store first, then the elements that bind to it. */
import { announceLive } from './announce.ts';
import { defineElements } from './define-elements.ts';
import { provideStore } from './elements/store-element.ts';
import { startPage } from './page.ts';

const store = startPage();
if (store) {
  provideStore(store);
  defineElements();
}
announceLive();
