/** Every page by keyboard alone: the way past the head, and every control in reach with a mark that shows where one is. */
import { expect, type Page, test } from '@playwright/test';
import { openLive } from './open-live.ts';
import { LESSONS, PAGES } from './pages.ts';

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

test('the first stop leads past the head', async ({ page }) => {
  await page.goto('./');
  await page.keyboard.press('Tab');
  await expect(page.locator('.skip')).toBeFocused();
  await expect(page.locator('.skip')).toBeInViewport();
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/#content$/);
});

/** How far the control in focus stands clear of the drawing that stays in view above it, px; undefined past the controls. */
const clearance = (page: Page) =>
  page.evaluate(() => {
    const control = document.activeElement?.closest('.play-controls') && document.activeElement;
    const drawing = control?.closest('live-figure')?.querySelector('.play-drawing');
    if (!control || !drawing) return undefined;
    return control.getBoundingClientRect().top - drawing.getBoundingClientRect().bottom;
  });

for (const address of LESSONS) {
  test(`${address} keeps what has the focus clear of the drawing on a phone`, async ({ page }) => {
    await page.setViewportSize({ width: 390, height: 844 });
    await openLive(page, address);
    const controls = page.locator('.play-controls :is(input, button)');
    await controls.first().focus();
    const clear: number[] = [];
    for (let here = await clearance(page); here !== undefined; here = await clearance(page)) {
      clear.push(here);
      await page.keyboard.press('Tab');
    }
    expect(clear.length).toBeGreaterThan(2);
    expect(Math.min(...clear)).toBeGreaterThanOrEqual(0);
  });
}

for (const address of PAGES) {
  test(`${address} is reached whole by keyboard`, async ({ page }) => {
    await openLive(page, address);
    const stops = await nameStops(page);
    const { reached, unmarked } = await walk(page, stops.length + 20);
    expect(unmarked).toEqual([]);
    expect(stops.filter((stop) => !reached.has(stop))).toEqual([]);
  });
}
