/** How the worksheet stands on a screen: nothing shifts while it comes alive, and a filled sheet is short. */
import { expect, type Page, test } from '@playwright/test';
import { openLive } from './open-live.ts';
import { openExample } from './worksheet-page.ts';

const PHONE = { width: 390, height: 844 };
const SCREENS = [PHONE, { width: 1280, height: 800 }];
const MOST_SHIFT = 0.02;
const MOST_SCREENS = 4;

/** Adds up what shifts on each page from now on. */
const watchShifts = (page: Page) =>
  page.addInitScript(() => {
    const shifts: number[] = [];
    Object.assign(window, { shifts });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries())
        shifts.push((entry as unknown as { value: number }).value);
    }).observe({ type: 'layout-shift', buffered: true });
  });

/** Opens the page as it is found, waits until it is quiet, and tells how much has shifted. */
async function shiftOf(page: Page): Promise<number> {
  await openLive(page, 'worksheet/');
  await expect(page.locator('[data-there]')).toBeVisible();
  await expect(page.locator('[data-answer="stress"] dd')).toContainText(/MPa|Waits/);
  await page.evaluate(() => new Promise((resolve) => requestIdleCallback(resolve)));
  return page.evaluate(() =>
    (window as unknown as { shifts: number[] }).shifts.reduce((sum, value) => sum + value, 0),
  );
}

for (const screen of SCREENS)
  test.describe(`on a screen ${screen.width} px wide`, () => {
    test.use({ viewport: screen });

    test('nothing shifts on a first visit, nor when one comes back', async ({ page }) => {
      await watchShifts(page);
      expect(await shiftOf(page), 'first visit').toBeLessThanOrEqual(MOST_SHIFT);
      await openExample(page);
      await expect(page.locator('.desk-picker .hint')).toContainText('Saved');
      expect(await shiftOf(page), 'back, all open').toBeLessThanOrEqual(MOST_SHIFT);
      await page.getByRole('button', { name: 'Close all parts' }).click();
      await page.locator('#readings summary').first().click();
      await expect(page.locator('#readings .part-inside')).toBeVisible();
      expect(await shiftOf(page), 'back, one open').toBeLessThanOrEqual(MOST_SHIFT);
    });
  });

test(`a filled sheet with its parts closed is at most ${MOST_SCREENS} screens of a phone`, async ({
  page,
}) => {
  await page.setViewportSize(PHONE);
  await openExample(page);
  await page.getByRole('button', { name: 'Close all parts' }).click();
  await expect(page.locator('.part > details[open]')).toHaveCount(0);
  const height = await page.evaluate(() => document.documentElement.scrollHeight);
  expect(height).toBeLessThanOrEqual(MOST_SCREENS * PHONE.height);
});
