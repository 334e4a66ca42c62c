/**
 * What nobody needs before the first touch: guess, questions, what is shared of a figure, the lighting of what is alike. Its
 * script comes with that touch, and an early press waits for it.
 */
import { setText } from './elements/value.ts';
import { fetchedLater, fetchWithFirstTouch, NOT_ARRIVED } from './fetched-later.ts';
import { reading } from './reading.ts';

const elements = fetchedLater(async () => {
  reading.fetch().catch(() => {}); // asked for again where something is typed
  (await import('./elements/late.ts')).defineLateElements();
  document.removeEventListener('submit', hold); // each answers by itself now
});

/** Holds a form that was sent before its script was there, and sends it again once it is. */
function hold(event: Event): void {
  const { target: form } = event;
  if (event.defaultPrevented || !(form instanceof HTMLFormElement)) return;
  event.preventDefault(); // or the page would be loaded anew, and what was typed lost
  elements.use(
    () => form.requestSubmit(),
    () => setText(form.parentElement?.querySelector('[data-part="reply"]') ?? null, NOT_ARRIVED),
  );
}

/** Fetches what answers with the first touch or step. */
export function bindLateElements(): void {
  fetchWithFirstTouch(document, elements);
  document.addEventListener('submit', hold);
}
