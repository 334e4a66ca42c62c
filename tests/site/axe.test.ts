/** WCAG 2.2 AA as far as a machine can tell, on every page: by day in metric units, by night in US units. */
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { openLive } from './open-live.ts';
import { PAGES } from './pages.ts';

const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const VISITS = [
  { colorScheme: 'light', units: 'metric' },
  { colorScheme: 'dark', units: 'us' },
] as const;

for (const address of PAGES) {
  for (const { colorScheme, units } of VISITS) {
    test(`${address} has no barrier, ${colorScheme}, ${units}`, async ({ page }) => {
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      await openLive(page, address);
      await page.locator(`#units-${units}`).check();
      const { violations } = await new AxeBuilder({ page }).withTags(RULES).analyze();
      const told = violations.flatMap(({ id, nodes }) =>
        nodes.map((node) => `${id}: ${node.html}`),
      );
      expect(told).toEqual([]);
    });
  }
}
