/** Every page by keyboard alone: the way past the head, and every control in reach with a mark that shows where one is. */
import { expect, type Page, test } from '@playwright/test';
import { PAGES } from './pages.ts';

/** What the Tab key should reach: one stop for a group of radio buttons, none inside a closed disclosure. */
const stops = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const all = [
      ...document.querySelectorAll<HTMLElement>(
        'a[href], button, input, select, textarea, summary, [tabindex="0"]',
      ),
    ];
    const shown = all.filter(
      (element) =>
        element.checkVisibility({ visibilityProperty: true }) && !element.matches(':disabled'),
    );
    const groups = new Set(
      shown.map((element) =>
        element.matches('[type="radio"]') ? (element as HTMLInputElement).name : element,
      ),
    );
    return groups.size;
  });

/** Tabs through the page; the number of different stops, and those whose focus cannot be seen. */
async function walk(page: Page, limit: number) {
  const unmarked: string[] = [];
  const seen = new Set<string>();
  for (let step = 0; step < limit; step += 1) {
    await page.keyboard.press('Tab');
    const { key, isMarked } = await page.evaluate(() => {
      const element = document.activeElement as HTMLElement;
      element.dataset['stop'] ??= String(document.querySelectorAll('[data-stop]').length);
      const marks = [element, element.nextElementSibling, element.firstElementChild];
      const isMarked = marks.some((mark) => {
        const { outlineStyle, strokeWidth, stroke } = mark
          ? getComputedStyle(mark)
          : { outlineStyle: 'none', strokeWidth: '0px', stroke: 'none' };
        return outlineStyle !== 'none' || (stroke !== 'none' && strokeWidth === '3px');
      });
      return { key: `${element.tagName} ${element.dataset['stop']}`, isMarked };
    });
    if (key.startsWith('BODY')) break;
    if (!isMarked) unmarked.push(key);
    seen.add(key);
  }
  return { reached: seen.size, unmarked };
}

test('the first stop leads past the head', async ({ page }) => {
  await page.goto('./');
  await page.keyboard.press('Tab');
  await expect(page.locator('.skip')).toBeFocused();
  await expect(page.locator('.skip')).toBeInViewport();
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/#content$/);
});

for (const address of PAGES) {
  test(`${address} is reached whole by keyboard`, async ({ page }) => {
    await page.goto(address, { waitUntil: 'networkidle' });
    const expected = await stops(page);
    const { reached, unmarked } = await walk(page, expected + 20);
    expect(unmarked).toEqual([]);
    expect(reached).toBeGreaterThanOrEqual(expected);
  });
}
