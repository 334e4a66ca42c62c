/** `<live-equation>`: the numbers inside an equation, in its visible half and in its MathML half alike. */
import { kindOf, numberAt } from '../../models/define-model.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import type { PageStore } from '../store.ts';
import { StoreElement } from './store-element.ts';
import { setText } from './value.ts';

/** An equation with live numbers. */
export class LiveEquation extends StoreElement {
  protected bind(store: PageStore): void {
    const slots = [...this.querySelectorAll<HTMLElement>('[data-live]')].map((node) => {
      const name = node.dataset['live'] ?? '';
      const system = node.classList.contains('q-us') ? 'us' : 'metric';
      return { node, name, system, kind: kindOf(store.model, name) } as const;
    });
    this.followValues(store, (values) => {
      for (const { node, name, kind, system } of slots) {
        setText(node, formatQuantity(numberAt(values, name), kind, system));
      }
    });
  }
}
