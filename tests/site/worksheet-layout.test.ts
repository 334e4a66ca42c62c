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

/** Boxes of the sheet that do not show all that stands in them. */
const cutBoxes = (page: Page): Promise<readonly string[]> =>
  page
    .locator('.paper input.box')
    .evaluateAll((boxes) =>
      (boxes as HTMLInputElement[])
        .filter((box) => box.checkVisibility() && box.scrollWidth > box.clientWidth)
        .map(({ id, value }) => `${id}: ${value}`),
    );

test('no box of a phone or a laptop cuts a number off that has its unit behind it', async ({
  page,
}) => {
  await page.setViewportSize(PHONE);
  await openExample(page);
  await page.locator('#units-metric').check({ force: true });
  await page.locator('#box-readings-0-torque').fill('10.25 N·m');
  await page.locator('#box-readings-0-dial').fill('0.4705');
  await page.locator('#box-band-thickness').fill('1.02 1.01 1.03 1.02 1.01');
  await page.locator('#units-us').check({ force: true });
  await expect(page.locator('#box-readings-0-dial')).toHaveValue('0.4705 mm');
  await page.locator('h1').click();
  for (const screen of SCREENS) {
    await page.setViewportSize(screen);
    expect(await cutBoxes(page), `${screen.width} px wide`).toEqual([]);
  }
});

test('the ring around a box lies on no word beside it', async ({ page }) => {
  await openExample(page);
  await page.locator('#box-band-thickness').focus();
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Tab');
  const offset = await page.locator(':focus').evaluate((box) => {
    const { outlineOffset, outlineWidth } = getComputedStyle(box);
    return Number.parseFloat(outlineOffset) + Number.parseFloat(outlineWidth);
  });
  expect(offset).toBeLessThanOrEqual(0);
});

test('a closed part says in short what tightens', async ({ page }) => {
  await openExample(page);
  const says = page.locator('#tensioner .part-says');
  await expect(says).toContainText('Tr20x4');
  await page.getByLabel('a hydraulic cylinder').check();
  await page.locator('#box-tensioner-cylinder-pistonDiameter').fill('40');
  await page.locator('#box-tensioner-cylinder-rodDiameter').fill('22 mm');
  await expect(says).toHaveText(/piston 40.*rod 22/);
});
