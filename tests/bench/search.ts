/** From a question typed into the page of search to its first result on the screen, processor slowed down. */
import { middleAndWorst, type Open, slowDown } from './slowed-browser.ts';

const LIMIT = 100; // ms
const QUESTIONS = [
  'wavy boards',
  'psi',
  'slack after lunch',
  'dial backwards',
  'grease on the screw',
];

/** Types each question whole and waits for the paint after its results; runs in the page. */
async function askInPage(questions: readonly string[]): Promise<number[]> {
  const box = document.querySelector<HTMLInputElement>('#search');
  const found = document.querySelector('[data-found]');
  if (!box || !found) return [];
  const times: number[] = [];
  for (const question of questions) {
    await painted();
    const start = performance.now();
    box.value = question;
    box.dispatchEvent(new Event('input', { bubbles: true }));
    times.push((await painted()) - start);
  }
  return found.childElementCount > 0 ? times : [];
}

/** Median and worst, against the limit. */
export async function searchToPaint(open: Open): Promise<readonly string[]> {
  const page = await open('search/');
  await page.getByRole('searchbox').fill('band');
  await page.locator('[data-found] li').first().waitFor();
  await slowDown(page);
  const times = await page.evaluate(askInPage, QUESTIONS);
  await page.close();
  return [`search to paint: ${middleAndWorst(times, LIMIT)}`];
}
