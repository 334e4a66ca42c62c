/** WCAG 2.2 AA as far as a machine can tell, on every page: by day in metric units; how it looks also by night in US units. */
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { openLive } from './open-live.ts';
import { PAGES } from './pages.ts';

const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const LOOKS = ['color-contrast', 'link-in-text-block', 'target-size']; // what theme and width of words can change

/** What is found on the page as it is shown now. */
async function barriers(axe: AxeBuilder): Promise<readonly string[]> {
  const { violations } = await axe.analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html}`));
}

for (const address of PAGES) {
  test(`${address} has no barrier`, async ({ page }) => {
    await page.emulateMedia({ reducedMotion: 'reduce', colorScheme: 'light' });
    await openLive(page, address);
    expect(await barriers(new AxeBuilder({ page }).withTags(RULES)), 'by day').toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    await page.locator('#units-us').check();
    expect(await barriers(new AxeBuilder({ page }).withRules(LOOKS)), 'by night').toEqual([]);
  });
}
