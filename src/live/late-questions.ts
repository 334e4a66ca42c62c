/** The questions of a page, far below its first screen: their script comes once the reader goes on, and an early answer waits for it. */
import { setText } from './elements/value.ts';
import { fetchedLater, fetchWithFirstTouch, NOT_ARRIVED } from './fetched-later.ts';

const questions = fetchedLater(async () => {
  const { CheckYourself } = await import('./elements/check-yourself.ts');
  customElements.define('check-yourself', CheckYourself);
});

/** Fetches what answers with the first touch or step. */
export function bindQuestions(page: Document): void {
  fetchWithFirstTouch(page, questions);
  page.addEventListener('submit', (event) => {
    const { target: form } = event;
    if (event.defaultPrevented || !(form instanceof HTMLFormElement)) return;
    event.preventDefault(); // or the page would be loaded anew, and what was typed lost
    questions.use(
      () => form.requestSubmit(),
      () => setText(form.parentElement?.querySelector('[data-part="reply"]') ?? null, NOT_ARRIVED),
    );
  });
}
