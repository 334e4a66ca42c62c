/** WCAG 2.2 AA as far as a machine can tell, on every page: by day in metric units, by night in US units. */
import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { openLive } from './open-live.ts';
import { PAGES } from './pages.ts';

const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const VISITS = [
  { colorScheme: 'light', units: 'metric' },
  { colorScheme: 'dark', units: 'us' },
] as const;

/** What is found on the page as it is shown now. */
async function barriers(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).withTags(RULES).analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html}`));
}

for (const address of PAGES) {
  test(`${address} has no barrier`, async ({ page }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await openLive(page, address);
    for (const { colorScheme, units } of VISITS) {
      await page.emulateMedia({ colorScheme });
      await page.locator(`#units-${units}`).check();
      expect(await barriers(page), `${colorScheme}, ${units}`).toEqual([]);
    }
  });
}
