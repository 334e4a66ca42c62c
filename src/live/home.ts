/** The script of the home page: its mill turns, and it tells where the reader left off. */
import { announceLive } from './announce.ts';
import { LiveFigure } from './elements/figure.ts';
import { bindHighlight } from './elements/highlight.ts';
import { LiveInput } from './elements/input.ts';
import { provideStore } from './elements/store-element.ts';
import { LiveValue } from './elements/value.ts';
import { tellLeftOff } from './left-off.ts';
import { startPage } from './page.ts';
import type { PageStore } from './store.ts';

function live(store: PageStore | undefined): void {
  if (store) {
    provideStore(store);
    customElements.define('live-value', LiveValue);
    customElements.define('live-input', LiveInput);
    customElements.define('live-figure', LiveFigure);
    bindHighlight();
  }
  tellLeftOff();
  announceLive();
}

void startPage().then(live);
