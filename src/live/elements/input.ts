/** `<live-input data-name>`: an input of the page's model, as a slider and box, a row of choices, or a button that adds a step. */
import type { Signal } from '@preact/signals-core';
import type { Value } from '../../models/define-model.ts';
import { type PageStore, quantityInput } from '../store.ts';
import { stepped } from './steps.ts';
import { StoreElement } from './store-element.ts';
import { bindTwins } from './twins.ts';

/** Binds what the build wrote to the store's input. */
export class LiveInput extends StoreElement {
  private wasBound = false;

  protected bind(store: PageStore): void {
    const name = this.dataset['name'] ?? '';
    const quantity = quantityInput(store, name);
    const choice = store.inputs[name];
    const button = this.querySelector('button');
    if (quantity && button) this.bindButton(button, quantity, store);
    else if (quantity) bindTwins(this, quantity, store.system, !this.wasBound);
    else if (choice) this.bindChoices(choice);
    this.bindShown(store);
    this.wasBound = true;
  }

  /** Some inputs are there only while a choice has one value. */
  private bindShown({ inputs }: PageStore): void {
    const [other = '', wanted] = this.dataset['when']?.split('=') ?? [];
    const choice = inputs[other];
    if (!choice) return;
    this.follow(() => {
      this.hidden = !wanted?.split('|').includes(String(choice.value));
    });
  }

  /** Each press is a step, as far as the input goes. */
  private bindButton(
    button: HTMLButtonElement,
    { spec, value }: NonNullable<ReturnType<typeof quantityInput>>,
    { system }: PageStore,
  ): void {
    this.listen(button, 'click', () => {
      value.value = stepped(spec, system.value, value.value, 1);
    });
    this.follow(() => {
      button.disabled = value.value >= spec.max;
    });
  }

  private bindChoices(value: Signal<Value>): void {
    const radios = [...this.querySelectorAll<HTMLInputElement>('input[type="radio"]')];
    const early = radios.find(({ checked, defaultChecked }) => checked && !defaultChecked);
    if (early && !this.wasBound) value.value = early.value; // chosen before the script was there
    for (const radio of radios) {
      this.listen(radio, 'change', () => {
        value.value = radio.value;
      });
    }
    this.follow(() => {
      for (const radio of radios) radio.checked = radio.value === value.value;
    });
  }
}
