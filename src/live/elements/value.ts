/** `<live-value data-name data-digits?>`: a quantity in the text, in both unit systems, kept in step. */
import { kindOf, numberAt } from '../../models/define-model.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import type { PageStore } from '../store.ts';
import { StoreElement } from './store-element.ts';

/** Writes text only where it differs: a value that stays is not touched. */
export function setText(node: Element | null, text: string): void {
  if (node && node.textContent !== text) node.textContent = text;
}

/** A number in prose. */
export class LiveValue extends StoreElement {
  protected bind(store: PageStore): void {
    const name = this.dataset['name'] ?? '';
    const kind = kindOf(store.model, name);
    const digits = this.dataset['digits'];
    const options = digits ? { digits: Number(digits) } : {};
    this.followValues(store, (values) => {
      const value = numberAt(values, name);
      for (const system of ['metric', 'us'] satisfies UnitSystem[]) {
        setText(this.querySelector(`.q-${system}`), formatQuantity(value, kind, system, options));
      }
    });
  }
}
