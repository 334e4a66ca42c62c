/** What is seldom wanted at once, questions and what is shared of a figure: its script comes with the first touch, and an early press waits for it. */
import { setText } from './elements/value.ts';
import { fetchedLater, fetchWithFirstTouch, NOT_ARRIVED } from './fetched-later.ts';

const elements = fetchedLater(async () => {
  const { CheckYourself, ShareFigure, ShareLink } = await import('./elements/late.ts');
  customElements.define('check-yourself', CheckYourself);
  customElements.define('share-figure', ShareFigure);
  customElements.define('share-link', ShareLink);
});

/** Fetches what answers with the first touch or step. */
export function bindLateElements(page: Document): void {
  fetchWithFirstTouch(page, elements);
  page.addEventListener('submit', (event) => {
    const { target: form } = event;
    if (event.defaultPrevented || !(form instanceof HTMLFormElement)) return;
    event.preventDefault(); // or the page would be loaded anew, and what was typed lost
    elements.use(
      () => form.requestSubmit(),
      () => setText(form.parentElement?.querySelector('[data-part="reply"]') ?? null, NOT_ARRIVED),
    );
  });
}
