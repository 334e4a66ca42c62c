/** Defines the live elements; apart from their classes, so that tests import those without side effects. */
import { LiveEquation } from './elements/equation.ts';
import { LiveFigure } from './elements/figure.ts';
import { LiveInput } from './elements/input.ts';
import { LiveValue } from './elements/value.ts';
import { bindLateElements } from './late-elements.ts';

/** Every element binds as it is defined: the store must be there. */
export function defineElements(): void {
  customElements.define('live-value', LiveValue);
  customElements.define('live-equation', LiveEquation);
  customElements.define('live-input', LiveInput);
  customElements.define('live-figure', LiveFigure);
  bindLateElements();
}
