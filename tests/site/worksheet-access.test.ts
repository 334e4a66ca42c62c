/** The worksheet for everyone: axe in every state, light and dark; narrow phones; units; no script. */
import { expect, type Page, test as testAlone } from '@playwright/test';
import { barriers, barriersOfLooks } from './barriers.ts';
import { test } from './kept-page.ts';
import { openLive } from './open-live.ts';
import { openDesk, openExample, openWorksheet, resultText } from './worksheet-page.ts';

/** By day everything, by night how it looks. */
async function expectAccessible(page: Page): Promise<void> {
  await page.emulateMedia({ colorScheme: 'light' });
  expect(await barriers(page), 'by day').toEqual([]);
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await barriersOfLooks(page), 'by night').toEqual([]);
}

async function expectNoSidewaysScroll(page: Page): Promise<void> {
  const [scroll, inner] = await page.evaluate(() => [
    document.documentElement.scrollWidth,
    innerWidth,
  ]);
  expect(scroll).toBeLessThanOrEqual(inner ?? 0);
}

/** How high the boxes are that show, px. */
const heightsOfBoxes = (page: Page): Promise<readonly number[]> =>
  page
    .locator('.paper input.box')
    .evaluateAll((boxes) => boxes.map((each) => each.getBoundingClientRect().height));

test('axe finds nothing on the empty sheet with every part open, and on a phone its boxes are large enough for a thumb', async ({
  page,
}) => {
  await openWorksheet(page);
  await expectAccessible(page);
  await page.setViewportSize({ width: 390, height: 800 });
  const heights = await heightsOfBoxes(page);
  expect(heights.length).toBeGreaterThan(30);
  expect(Math.min(...heights.filter((height) => height > 0))).toBeGreaterThanOrEqual(44);
});

test('axe finds nothing on a filled sheet with every part closed, its desk open', async ({
  page,
}) => {
  await openExample(page);
  await page.getByRole('button', { name: 'Close all parts' }).click();
  await expect(page.locator('.part > details[open]')).toHaveCount(0);
  await openDesk(page);
  await page.locator('.desk-keeping > summary').click();
  await expect(page.locator('.desk-keeping')).toContainText('Empty.');
  await expectAccessible(page);
});

test('axe finds nothing on the filled sheet, its log and its card, everything unfolded', async ({
  page,
}) => {
  await openExample(page);
  await page.evaluate(() => {
    for (const each of document.querySelectorAll('details')) each.open = true;
  });
  await page.getByRole('button', { name: 'Add today' }).click();
  await page.locator('#box-log-1-date').fill('2026-10-01');
  await page.locator('#box-log-1-torque').fill('12');
  await page.waitForSelector('.card-code svg');
  await expectAccessible(page);
});

test('axe finds nothing among refusals', async ({ page }) => {
  await openExample(page);
  await page.locator('#box-band-thickness').fill('thin');
  await page.locator('#box-readings-2-dial').fill('?');
  await page.locator('#box-target-makerLimitStress').fill('90');
  await page.getByLabel('by its own measures').check();
  await openDesk(page);
  await page.getByRole('button', { name: 'Delete', exact: true }).click();
  await page.getByRole('button', { name: 'Put it back' }).click();
  await expectAccessible(page);
});

test('on a phone what has the focus is never under the strip', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 800 });
  await openExample(page);
  await page.locator('#box-band-bodyWidth').focus();
  const covered: string[] = [];
  for (let presses = 0; presses < 60; presses += 1) {
    await page.keyboard.press('Tab');
    const found = await page.evaluate(() => {
      const [focus, strip] = [document.activeElement, document.querySelector('.reach')];
      if (!focus?.closest('.paper') || !strip) return undefined;
      const beneath = focus.getBoundingClientRect().bottom - strip.getBoundingClientRect().top;
      return beneath > 0 ? focus.outerHTML : undefined;
    });
    if (found) covered.push(found);
  }
  expect(covered).toEqual([]);
});

test('nothing scrolls sideways on narrow phones', async ({ page }) => {
  const onPhones = async () => {
    for (const width of [320, 390]) {
      await page.setViewportSize({ width, height: 800 });
      await expectNoSidewaysScroll(page);
    }
  };
  await page.setViewportSize({ width: 320, height: 800 });
  await openLive(page, 'worksheet/');
  await onPhones();
  await openExample(page);
  await page.getByText('The numbers in the chart').click();
  await page.locator('#box-readings-2-dial').fill('0.4.6 and more of it');
  await page.locator('#units-us').check({ force: true });
  await expect(page.locator('#box-band-bodyWidth')).toHaveValue('29 mm');
  await onPhones();
});

test('a change of units keeps what was typed, and its meaning', async ({ page }) => {
  await openExample(page);
  const width = page.locator('#box-band-bodyWidth');
  await page.locator('#units-us').check({ force: true });
  await expect(width).toHaveValue('29 mm');
  expect(await resultText(page, 'setting')).toContain('ft·lbf');
  await page.locator('#units-metric').check({ force: true });
  await expect(width).toHaveValue('29');
  expect(await resultText(page, 'setting')).toContain('14.91 N·m');
});

testAlone.describe('without script', () => {
  testAlone.use({ javaScriptEnabled: false });

  testAlone('the page is a form to print, with its formulae', async ({ page }) => {
    await page.goto('worksheet/');
    await expect(page.getByText('print it, take it to the mill')).toBeVisible();
    await expect(page.locator('[data-result="stress"] .formula')).toContainText('E · ΔL');
    await expect(page.getByText('What the letters mean')).toBeVisible();
    await expect(page.getByText('CAUTION', { exact: true })).toBeVisible();
    for (const part of await page.locator('.part').all())
      await expect(part.locator('.part-boxes')).toBeVisible();
    await expect(page.locator('.desk')).toBeHidden();
  });
});
