/** Going through a page with the Tab key alone. */
import type { Page } from '@playwright/test';

const HANDS = 'a[href], button, input, select, textarea, summary, [tabindex="0"]';

/**
 * Names what the Tab key should reach, each in its `data-stop`: one stop for a group of radio buttons, none
 * inside a closed disclosure.
 */
const nameStops = (page: Page): Promise<readonly string[]> =>
  page.evaluate((hands) => {
    const names = new Set<string>();
    for (const [place, element] of document.querySelectorAll<HTMLElement>(hands).entries()) {
      if (!element.checkVisibility({ visibilityProperty: true })) continue;
      if (element.matches(':disabled')) continue;
      const isChoice = element instanceof HTMLInputElement && element.type === 'radio';
      const name = isChoice ? `choice ${element.name}` : `${place} ${element.outerHTML}`;
      element.dataset['stop'] = name.slice(0, 160);
      names.add(element.dataset['stop']);
    }
    return [...names];
  }, HANDS);

/** Where the focus is, and whether that can be seen; undefined past the last stop. */
const focused = (page: Page) =>
  page.evaluate(() => {
    const element = document.activeElement as HTMLElement;
    if (element === document.body) return undefined;
    const isMarked = [element, element.nextElementSibling, element.firstElementChild].some(
      (mark) => {
        if (!mark) return false;
        const { outlineStyle, strokeWidth, stroke } = getComputedStyle(mark);
        return outlineStyle !== 'none' || (stroke !== 'none' && strokeWidth === '3px');
      },
    );
    return { stop: element.dataset['stop'] ?? `unforeseen ${element.outerHTML}`, isMarked };
  });

/** Tabs through the page, at most `limit` times: the stops reached, and those whose focus cannot be seen. */
async function walk(page: Page, limit: number) {
  const reached = new Set<string>();
  const unmarked: string[] = [];
  for (let step = 0; step < limit; step += 1) {
    await page.keyboard.press('Tab');
    const here = await focused(page);
    if (!here) break;
    reached.add(here.stop);
    if (!here.isMarked) unmarked.push(here.stop);
  }
  return { reached, unmarked };
}

/** What the Tab key does not reach though it should, and where it goes without a mark that shows it. */
export async function lostByKeyboard(page: Page): Promise<readonly string[]> {
  const stops = await nameStops(page);
  const { reached, unmarked } = await walk(page, stops.length + 20);
  const lost = stops.filter((stop) => !reached.has(stop));
  return [
    ...lost.map((stop) => `not reached: ${stop}`),
    ...unmarked.map((stop) => `no mark: ${stop}`),
  ];
}
