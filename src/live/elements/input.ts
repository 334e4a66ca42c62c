/** `<live-input data-name>`: an input of the page's model, as a slider and box or as a row of choices. */
import type { Signal } from '@preact/signals-core';
import type { PageStore } from '../store.ts';
import { StoreElement } from './store-element.ts';
import { bindTwins } from './twins.ts';

/** Binds what the build wrote to the store's input. */
export class LiveInput extends StoreElement {
  protected bind(store: PageStore): void {
    const name = this.dataset['name'] ?? '';
    const spec = store.model.inputs[name];
    const value = store.inputs[name];
    if (!spec || !value) return;
    if (spec.options) this.bindChoices(value);
    else bindTwins(this, spec, value, store.system);
    this.bindShown(store);
  }

  /** Some inputs are there only while a choice has one value. */
  private bindShown({ inputs }: PageStore): void {
    const [other = '', wanted] = this.dataset['when']?.split('=') ?? [];
    const choice = inputs[other];
    if (!choice) return;
    this.follow(() => {
      this.hidden = choice.value !== Number(wanted);
    });
  }

  private bindChoices(value: Signal<number>): void {
    const radios = [...this.querySelectorAll<HTMLInputElement>('input[type="radio"]')];
    for (const radio of radios) {
      this.listen(radio, 'change', () => {
        value.value = Number(radio.value);
      });
    }
    this.follow(() => {
      for (const radio of radios) radio.checked = Number(radio.value) === value.value;
    });
  }
}
