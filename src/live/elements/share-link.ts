/** `<share-link>`: copies the address of the page as it stands, and "start again" puts every input back. */
import { NOT_ARRIVED } from '../fetched-later.ts';
import { type PageStore, resetInputs } from '../store.ts';
import { StoreElement } from './store-element.ts';
import { setText } from './value.ts';

/** Copy and reset buttons with a plain answer beside them. */
export class ShareLink extends StoreElement {
  protected bind(store: PageStore): void {
    const answer = this.querySelector('[role="status"]');
    const copy = this.querySelector('[data-action="copy"]');
    const reset = this.querySelector('[data-action="reset"]');
    if (!answer || !copy || !reset) return;
    this.listen(copy, 'click', async () => {
      const keeper = await import('../link-keeper.ts').catch(() => undefined);
      setText(answer, keeper ? await keeper.copyAddress(store) : NOT_ARRIVED);
    });
    this.listen(reset, 'click', () => {
      resetInputs(store);
      setText(answer, 'Back to the numbers of this page.');
    });
  }
}
