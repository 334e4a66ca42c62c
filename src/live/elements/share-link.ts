/** `<share-link>`: "start again" puts every input back. What is shared stands under each figure. */
import { type PageStore, resetInputs } from '../store.ts';
import { StoreElement } from './store-element.ts';
import { setText } from './value.ts';

/** A button with a plain answer beside it. */
export class ShareLink extends StoreElement {
  protected bind(store: PageStore): void {
    const answer = this.querySelector('[role="status"]');
    if (!answer) return;
    this.listen(this, 'submit', (event) => {
      event.preventDefault();
      resetInputs(store);
      setText(answer, 'Back to the numbers of this page.');
    });
  }
}
