/**
 * A page of a toy lesson in a document without a layout: a pull, carried by one strand or by two.
 * Units: SI; 10 lbf are 44.482 216 152 605 N.
 * All tests of live elements share one document, one unit switch and one list of elements, so each starts here.
 */
import { effect } from '@preact/signals-core';
import { provideStore } from '../../src/live/elements/store-element.ts';
import { createPageStore, type PageStore } from '../../src/live/store.ts';
import { unitSystem } from '../../src/live/unit-system.ts';
import { defineModel } from '../../src/models/define-model.ts';

/** Ten pounds-force, a step of the toy's pull for readers of US units. */
export const TEN_POUNDS = 44.482_216_152_605;

/** What carries the pull. */
export const ONE_STRAND = 'one';
export const TWO_STRANDS = 'two';

/** The pull on a strand: all of it, or half where two carry. */
export const toy = defineModel({
  name: 'toy',
  inputs: {
    pull: {
      kind: 'force',
      default: 100,
      min: 0,
      max: 1000,
      step: { metric: 10, us: TEN_POUNDS },
    },
    strands: { options: [ONE_STRAND, TWO_STRANDS], default: TWO_STRANDS },
  },
  outputs: { strand: 'force' },
  evaluate: ({ pull, strands }) => ({ strand: strands === ONE_STRAND ? pull : pull / 2 }),
});

/** The toy at rest. */
export const AT_REST = { pull: 100, strands: TWO_STRANDS, strand: 50 };

/** What the build writes for a slider and a box. */
export const TWINS = `
  <div class="twins">
    <label for="box">pull</label>
    <input class="box" id="box" type="text" value="100" aria-describedby="refusal" />
    <span class="unit">N</span>
    <input class="slider" type="range" min="0" max="1000" step="any" value="100" />
    <p class="refusal" id="refusal" hidden></p>
  </div>`;

/** The address without a fragment and the units metric, as a new visitor finds them. */
export function startAfresh(): void {
  document.body.innerHTML = '';
  history.replaceState(null, '', location.pathname);
  unitSystem.value = 'metric';
}

/** Writes a page, its elements defined and bound to a store of the toy. */
export function openPage(
  html: string,
  elements: Readonly<Record<string, CustomElementConstructor>>,
): PageStore {
  startAfresh();
  const store = createPageStore(toy, {});
  provideStore(store);
  for (const [name, Element] of Object.entries(elements)) {
    if (!customElements.get(name)) customElements.define(name, Element);
  }
  document.body.innerHTML = html;
  return store;
}

/** The one element of the page that a selector finds. */
export function only<Found extends Element = HTMLElement>(selector: string): Found {
  const found = document.querySelectorAll<Found>(selector);
  const [one] = found;
  if (!one || found.length > 1) throw new Error(`${found.length} elements are ${selector}`);
  return one;
}

/** The text of an element with plain spaces. */
export function textOf(selector: string): string {
  return (only(selector).textContent ?? '').replace(/\s/g, ' ');
}

/** Types into a box, as a person does: it has the focus, and keeps it. */
export function type(box: HTMLInputElement, text: string): void {
  box.focus();
  box.value = text;
  box.dispatchEvent(new Event('input', { bubbles: true }));
}

/** Moves a slider to a number on its own scale. */
export function slide(slider: HTMLInputElement, to: number): void {
  slider.value = String(to);
  slider.dispatchEvent(new Event('input', { bubbles: true }));
}

/** Presses a key on an element; false where the page has taken it for its own. */
export function press(element: Element, key: string): boolean {
  return element.dispatchEvent(
    new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }),
  );
}

/** How often something that is read from signals has been worked out anew. */
export function countRuns(read: () => unknown): () => number {
  let runs = 0;
  effect(() => {
    read();
    runs += 1;
  });
  return () => runs;
}
