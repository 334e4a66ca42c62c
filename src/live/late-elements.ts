/**
 * What nobody needs before the first touch: questions, what is shared of a figure, the lighting of what is alike. Its
 * script comes with that touch, and an early press waits for it.
 */
import { setText } from './elements/value.ts';
import { fetchedLater, fetchWithFirstTouch, NOT_ARRIVED } from './fetched-later.ts';

const elements = fetchedLater(async () => {
  const late = await import('./elements/late.ts');
  customElements.define('check-yourself', late.CheckYourself);
  customElements.define('change-one', late.ChangeOne);
  customElements.define('share-figure', late.ShareFigure);
  customElements.define('share-link', late.ShareLink);
  late.bindHighlight();
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
