/** `<onward-link>`: its link leads to another page of the same model, with the numbers as they now stand. */
import { pageAddress } from '../link-keeper.ts';
import type { PageStore } from '../store.ts';
import { StoreElement } from './store-element.ts';

/** Takes the reader's numbers along. */
export class OnwardLink extends StoreElement {
  protected bind(store: PageStore): void {
    const link = this.querySelector('a');
    if (!link) return;
    for (const touch of ['pointerdown', 'focus', 'click'] as const)
      this.listen(link, touch, () => {
        link.href = pageAddress(store, link.pathname);
      });
  }
}
