/**
 * For who goes over the sheet by keyboard or by ear: what is wrong with a box is said when it is left, and the focus stays
 * near a button that goes with what it did. Fetched with the first touch.
 */
import type { Signal } from '@preact/signals-core';

const SETTLED = 300; // ms, until the sentence stands and the next box has been read out
const REACHED = 'a[href], button:not(:disabled), input, select, summary';

const nameOf = (box: HTMLInputElement) => box.ariaLabel ?? box.labels?.[0]?.textContent ?? '';

/** Says what stands beside a box in trouble, once it is left, and takes it back with the next thing that is typed or chosen. */
function tellTroubles(page: Document, spoken: Signal<string>): void {
  let told = '';
  page.addEventListener('input', () => {
    if (spoken.value === told) spoken.value = '';
  });
  page.addEventListener('focusout', ({ target: box }) => {
    if (!(box instanceof HTMLInputElement) || box.dataset['path'] === undefined) return;
    setTimeout(() => {
      const trouble = page.getElementById(`${box.id}-trouble`);
      if (!trouble) return;
      spoken.value = ''; // or the same sentence would not be said again
      told = `${nameOf(box)}: ${trouble.textContent}`;
      spoken.value = told;
    }, SETTLED);
  });
}

const canBeReached = (each: HTMLElement) =>
  each.isConnected && each.checkVisibility({ visibilityProperty: true });

/** Where a button pressed by key is gone, goes to what stood before it, or else behind it. */
function stayNear(page: Document): void {
  const isPressedByKey = ({ detail }: MouseEvent) => detail === 0;
  const note = (event: MouseEvent) => {
    if (!isPressedByKey(event) || !(event.target instanceof HTMLElement)) return;
    const all = [...page.querySelectorAll<HTMLElement>(REACHED)];
    const at = all.indexOf(event.target);
    const nearest = [...all.slice(0, at).reverse(), ...all.slice(at + 1)];
    setTimeout(() => {
      if (page.activeElement === page.body) nearest.find(canBeReached)?.focus();
    }, SETTLED);
  };
  page.addEventListener('click', note, { capture: true });
}

/** Binds both for the whole page. */
export function bindByKeyboard(page: Document, spoken: Signal<string>): void {
  tellTroubles(page, spoken);
  stayNear(page);
}
