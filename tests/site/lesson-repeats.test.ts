/** More repeats of a series, simulated when the reader asks: they come bit by bit, and the page answers meanwhile. */
import { expect } from '@playwright/test';
import { test } from './kept-page.ts';
import { openLive } from './open-live.ts';

test('more series are simulated on demand, a few in each frame', async ({ page }) => {
  await openLive(page, './lessons/where-is-zero/');
  const figure = page.locator('[data-figure="repeats"]');
  await page.locator('details.fold').filter({ has: figure }).locator('summary').click();
  const finding = figure.locator('.finding').filter({ visible: true });
  await expect(finding).toHaveText(/^In 300 simulated series/);
  await finding.evaluate((element) => {
    const seen = new Set<string>();
    Object.assign(window, { seen });
    new MutationObserver(() => seen.add(element.textContent ?? '')).observe(element, {
      characterData: true,
      childList: true,
      subtree: true,
    });
  });
  await figure.getByRole('button', { name: 'Simulate more series' }).click();
  await expect(finding).toHaveText(/^In 600 simulated series/);
  const steps = await page.evaluate(() => (window as unknown as { seen: Set<string> }).seen.size);
  expect(steps).toBeGreaterThan(5);
  await expect(page).toHaveURL(/#v=1&repeats=600$/);
  await page.getByRole('button', { name: 'Start again' }).click();
  await figure.scrollIntoViewIfNeeded();
  await expect(finding).toHaveText(/^In 300 simulated series/);
});
