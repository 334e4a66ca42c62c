/** The worksheet for everyone: axe in every state, light and dark; narrow phones; units; no script. */
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { openWorksheet, resultText } from './worksheet-page.ts';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

async function expectAccessible(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).withTags(TAGS).analyze();
  const found = violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html)}`);
  expect(found).toEqual([]);
}

async function openExample(page: Page): Promise<void> {
  await openWorksheet(page);
  await page.locator('.desk-offer button').first().click();
  await page.waitForSelector('.stress-chart');
}

async function expectNoSidewaysScroll(page: Page): Promise<void> {
  const [scroll, inner] = await page.evaluate(() => [
    document.documentElement.scrollWidth,
    innerWidth,
  ]);
  expect(scroll).toBeLessThanOrEqual(inner ?? 0);
}

for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(colorScheme, () => {
    test.use({ colorScheme });

    test('axe finds nothing on the empty sheet', async ({ page }) => {
      await openWorksheet(page);
      await expectAccessible(page);
    });

    test('axe finds nothing on the filled sheet and its card, everything unfolded', async ({
      page,
    }) => {
      await openExample(page);
      await page.evaluate(() => {
        for (const each of document.querySelectorAll('details')) each.open = true;
      });
      await page.waitForSelector('.card-code svg');
      await expectAccessible(page);
    });

    test('axe finds nothing among refusals', async ({ page }) => {
      await openExample(page);
      await page.locator('#box-band-thickness').fill('thin');
      await page.locator('#box-readings-2-dial').fill('?');
      await page.locator('#box-target-makerLimitStress').fill('90');
      await page.getByLabel('by its own measures').check();
      await page.getByRole('button', { name: 'Delete' }).click();
      await page.getByRole('button', { name: 'Put it back' }).click();
      await expectAccessible(page);
    });
  });
}

for (const width of [320, 390]) {
  test(`nothing scrolls sideways at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 800 });
    await openWorksheet(page);
    await expectNoSidewaysScroll(page);
    await page.locator('.desk-offer button').first().click();
    await page.waitForSelector('.stress-chart');
    await page.getByText('The numbers in the chart').click();
    await page.locator('#box-readings-2-dial').fill('0.4.6 and more of it');
    await page.locator('#units-us').check({ force: true });
    await expectNoSidewaysScroll(page);
  });
}

test('boxes are large enough for a thumb', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 800 });
  await openWorksheet(page);
  const heights = await page
    .locator('.paper input.box')
    .evaluateAll((boxes) => boxes.map((each) => each.getBoundingClientRect().height));
  expect(heights.length).toBeGreaterThan(30);
  expect(Math.min(...heights.filter((height) => height > 0))).toBeGreaterThanOrEqual(44);
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

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });

  test('the page is a form to print, with its formulae', async ({ page }) => {
    await page.goto('worksheet/');
    await expect(page.getByText('print it, take it to the mill')).toBeVisible();
    await expect(page.locator('[data-result="stress"] .formula')).toContainText('E · ΔL');
    await expect(page.getByText('What the letters mean')).toBeVisible();
    await expect(page.getByText('CAUTION', { exact: true })).toBeVisible();
    await expect(page.locator('.desk')).toBeHidden();
  });
});
