/**
 * `<change-one data-input data-to>`: its button sets one input, the others as the page starts, and tells what happens, until
 * something else is changed.
 */
import { batch } from '@preact/signals-core';
import { inputsAt, type Values } from '../../models/define-model.ts';
import { type PageStore, resetInputs, setInput } from '../store.ts';
import { StoreElement } from './store-element.ts';

/** Changes one thing in a worked example. */
export class ChangeOne extends StoreElement {
  protected bind(store: PageStore): void {
    const told = this.querySelector<HTMLElement>('[data-then]');
    const { input = '', to = '' } = this.dataset;
    if (!told) return;
    let changed: Values | undefined;
    this.listen(this, 'submit', (event) => {
      event.preventDefault();
      const value = to === '' || Number.isNaN(Number(to)) ? to : Number(to);
      const round = inputsAt(store.model, { [input]: value }, store.system.peek())[input];
      batch(() => {
        resetInputs(store);
        setInput(store, input, round ?? value);
      });
      changed = store.values.peek();
      told.dataset['then'] = 'told';
    });
    this.follow(() => {
      if (store.values.value !== changed) told.dataset['then'] = 'waiting';
    });
  }
}
