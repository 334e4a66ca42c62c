/** Keeps the address in step with the inputs, and tells what of a link could not be used. */
import { effect } from '@preact/signals-core';
import { linkFragment, readLink } from './link.ts';
import { type PageStore, setInput } from './store.ts';

/** Writing the address on every tick of a slider costs more than drawing the figure does. */
const REST_BEFORE_WRITING = 150; // ms

function fragmentOf({ model, values }: PageStore): string {
  return linkFragment(model, values.value);
}

function tell(refused: readonly string[]): void {
  const place = document.querySelector<HTMLElement>('[data-link-refused]');
  if (!place) return;
  place.hidden = refused.length === 0;
  place.textContent =
    refused.length === 0
      ? ''
      : `Part of the link could not be used and was left out: ${refused.join(', ').slice(0, 200)}.`;
}

function open(store: PageStore): void {
  const { inputs, refused } = readLink(store.model, location.hash);
  for (const [name, spec] of Object.entries(store.model.inputs)) {
    setInput(store, name, inputs[name] ?? spec.default);
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

/** Writes the fragment once the inputs rest, and opens links typed into the address. */
export function keepLink(store: PageStore, refused: readonly string[]): void {
  tell(refused);
  let resting: ReturnType<typeof setTimeout> | undefined;
  let first = true;
  effect(() => {
    const fragment = fragmentOf(store);
    clearTimeout(resting);
    if (!first) resting = setTimeout(() => write(fragment), REST_BEFORE_WRITING);
    first = false;
  });
  addEventListener('hashchange', () => {
    if (location.hash.startsWith('#v=')) open(store);
  });
}

/** The whole address of the page as it stands now. */
export function pageAddress(store: PageStore): string {
  const fragment = fragmentOf(store);
  return `${location.origin}${location.pathname}${fragment === '' ? '' : `#${fragment}`}`;
}
