/**
 * The script of a figure that stands alone: the figure answers, the page that holds it is told how high it is, the
 * way on to the lesson takes the numbers along, and before a class its notes are folded behind a key.
 */
import { announceLive } from './announce.ts';
import { bringToLife } from './bring-to-life.ts';
import { startPage } from './page.ts';
import type { PageStore } from './store.ts';
import { bindUnitSwitch } from './unit-system.ts';

/** Tells the page around this one, whoever's it is, the height of the figure: a number, nothing of the reader's. */
function tellHeight(): void {
  if (parent === window) return;
  const tell = () =>
    parent.postMessage({ notebookHeight: document.documentElement.offsetHeight }, '*');
  new ResizeObserver(tell).observe(document.documentElement);
}

/** Takes the numbers of the address along to the lesson. */
function takeAlong(): void {
  const onward = document.querySelector<HTMLAnchorElement>('[data-onward]');
  for (const touch of ['pointerdown', 'focus', 'click'])
    onward?.addEventListener(touch, () => {
      onward.hash = location.hash;
    });
}

/** Before a class the figure's notes are folded: the key N, or a press on what tells of it, shows them over the screen's foot. */
function foldNotes(): void {
  const root = document.documentElement;
  const button = document.querySelector<HTMLElement>('[data-notes-key]');
  if (!button || root.dataset['projector'] === undefined) return;
  const turn = () => {
    const isShown = root.toggleAttribute('data-notes');
    button.setAttribute('aria-pressed', String(isShown));
  };
  button.addEventListener('click', turn);
  document.addEventListener('keydown', ({ key, target, ctrlKey, metaKey, altKey }) => {
    const isTyped = target instanceof HTMLInputElement && target.type === 'text';
    if (/^n$/i.test(key) && !isTyped && !ctrlKey && !metaKey && !altKey) turn();
  });
}

async function live(store: PageStore | undefined): Promise<void> {
  if (store) await bringToLife(store);
  announceLive();
}

bindUnitSwitch();
tellHeight();
takeAlong();
foldNotes();
void startPage().then(live);
