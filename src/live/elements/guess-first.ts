/**
 * `<guess-first>`: the reader commits a number before anything is shown; the guess then stays beside the truth, here
 * and in the figure. Nothing is scored. Without script the truth is in a plain disclosure.
 */
import { signal } from '@preact/signals-core';
import { type QuantityInput, snapped } from '../../models/define-model.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import type { PageStore } from '../store.ts';
import { StoreElement } from './store-element.ts';
import { bindTwins } from './twins.ts';
import { setText } from './value.ts';

/** A guess and its disclosure. */
export class GuessFirst extends StoreElement {
  protected bind(store: PageStore): void {
    const spec = JSON.parse(this.dataset['spec'] ?? '{}') as QuantityInput;
    const commit = this.querySelector<HTMLButtonElement>('button');
    const truth = this.querySelector('details');
    const said = this.querySelector<HTMLElement>('[data-said]');
    if (!commit || !truth || !said) return;
    const value = signal(snapped(spec, store.system.value, spec.default));
    bindTwins(this, { spec, value }, store.system, true);
    this.listen(this, 'submit', (event) => {
      event.preventDefault();
      store.guess.value = value.value;
      truth.open = true;
    });
    this.listen(this, 'keydown', (event) => {
      const isSlider = event.target instanceof HTMLInputElement && event.target.type === 'range';
      if (event.key === 'Enter' && isSlider) event.preventDefault(); // it would commit the guess
    });
    this.follow(() => {
      const guess = store.guess.value;
      if (guess === undefined) return;
      setText(said, `You guessed ${formatQuantity(guess, spec.kind, store.system.value)}.`);
      setText(commit, 'Guess again');
    });
  }
}
