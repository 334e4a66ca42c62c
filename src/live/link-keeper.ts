/** Keeps the address in step with the inputs, and tells what of a link could not be used. */
import { effect } from '@preact/signals-core';
import type { Model } from '../models/define-model.ts';
import { type LinkContent, linkFragment, readLink } from './link.ts';
import { opened as openedWith, type PageStore, setInput } from './store.ts';

function tell(refused: readonly string[]): void {
  const place = document.querySelector<HTMLElement>('[data-link-refused]');
  if (!place) return;
  place.hidden = refused.length === 0;
  place.textContent =
    refused.length === 0
      ? ''
      : `Part of the link could not be used and was left out: ${refused.join(', ').slice(0, 200)}.`;
}

/** What the address holds; what is neither a link nor a place on the page is a damaged link, and refused. */
export function linkInAddress(model: Model): LinkContent {
  const name = location.hash.slice(1);
  const isRead = name === '' || name.startsWith('v=') || document.getElementById(name);
  return isRead ? readLink(model, name) : { inputs: {}, refused: [name] };
}

function open(store: PageStore): void {
  const { inputs, refused } = linkInAddress(store.model);
  const from = openedWith(store, inputs);
  for (const [name, spec] of Object.entries(store.model.inputs)) {
    setInput(store, name, from[name] ?? spec.default);
  }
  tell(refused);
}

/** Replaces the fragment, without a new history entry; an anchor that a reader followed stays until something differs. */
function write(fragment: string): void {
  const isAnchor = location.hash !== '' && !location.hash.startsWith('#v=');
  if (fragment === '' && isAnchor) return;
  const bare = location.pathname + location.search;
  history.replaceState(null, '', fragment === '' ? bare : `#${fragment}`);
}

/** Takes in what the address now holds. */
function followAddress(store: PageStore): void {
  if (location.hash.startsWith('#v=')) open(store);
  else tell(linkInAddress(store.model).refused);
}

/**
 * Writes the fragment once the inputs rest (on every tick it costs more than the drawing) and are no longer those that
 * were opened, and opens links typed into the address; where no link has been read yet, also the one that is there.
 */
export function keepLink(
  store: PageStore,
  refused?: readonly string[],
  opened = store.settled.peek(),
): void {
  if (refused) tell(refused);
  else followAddress(store);
  effect(() => {
    const values = store.settled.value;
    if (values !== opened) write(linkFragment(store.model, values, store.own));
  });
  addEventListener('hashchange', () => followAddress(store));
}

/** The whole address with the inputs as they stand now: of this page, or of another that starts at the model's defaults. */
export function pageAddress(store: PageStore, other?: string): string {
  const own = other === undefined ? store.own : {};
  const fragment = linkFragment(store.model, store.values.value, own);
  const path = other ?? location.pathname;
  return `${location.origin}${path}${fragment === '' ? '' : `#${fragment}`}`;
}
