/** The script of a worked example: the figure of its lesson, its few inputs, and the one thing to change. */
import { announceLive } from './announce.ts';
import { ChangeOne } from './elements/change-one.ts';
import { LiveFigure } from './elements/figure.ts';
import { bindHighlight } from './elements/highlight.ts';
import { LiveInput } from './elements/input.ts';
import { ShareLink } from './elements/share-link.ts';
import { provideStore } from './elements/store-element.ts';
import { fetchWithFirstTouch } from './fetched-later.ts';
import { startPage } from './page.ts';
import { reading } from './reading.ts';
import type { PageStore } from './store.ts';

function live(store: PageStore | undefined): void {
  if (store) {
    provideStore(store);
    customElements.define('live-input', LiveInput);
    customElements.define('live-figure', LiveFigure);
    customElements.define('change-one', ChangeOne);
    customElements.define('share-link', ShareLink);
    bindHighlight();
    fetchWithFirstTouch(document, reading);
  }
  announceLive();
}

void startPage().then(live);
