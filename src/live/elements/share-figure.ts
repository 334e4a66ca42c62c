/** `<share-figure data-alone>`: opens and closes what a reader can share of the figure that it stands in. */
import { NOT_ARRIVED } from '../fetched-later.ts';
import type { PageStore } from '../store.ts';
import { StoreElement } from './store-element.ts';
import { setText } from './value.ts';

/** A form of one button: pressed before this script is there, it is pressed again once it is. */
export class ShareFigure extends StoreElement {
  protected bind(store: PageStore): void {
    const button = this.querySelector('button');
    const place = this.querySelector('[data-part="reply"]');
    const figure = this.closest<HTMLElement>('[data-figure]');
    if (!button || !place || !figure) return;
    this.listen(this, 'submit', (event) => {
      event.preventDefault();
      void import('../sharing/open.ts').then(
        ({ openOrClose }) => openOrClose(figure, button, place, store),
        () => setText(place, NOT_ARRIVED),
      );
    });
  }
}
