/** WCAG 2.2 AA as far as a machine can tell, on every page: by day in metric units; how it looks also by night in US units. */
import { expect, test } from '@playwright/test';
import { barriers, barriersOfLooks, WCAG } from './barriers.ts';
import { openLive } from './open-live.ts';
import { PAGES } from './pages.ts';

for (const address of PAGES) {
  test(`${address} has no barrier`, async ({ page }) => {
    await page.emulateMedia({ reducedMotion: 'reduce', colorScheme: 'light' });
    await openLive(page, address);
    expect(await page.locator('iframe').count(), 'frames').toBe(0);
    expect(await barriers(page, [...WCAG, 'best-practice']), 'by day').toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    await page.locator('#units-us').check();
    expect(await barriersOfLooks(page), 'by night').toEqual([]);
  });
}
