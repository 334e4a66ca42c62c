/** The unit switch: on every page, by finger and by keyboard, remembered, and without script. */
import { expect, type Page, test as testAlone } from '@playwright/test';
import { test } from './kept-page.ts';

const metric = (page: Page) => page.locator('.q-metric:visible');
const us = (page: Page) => page.locator('.q-us:visible');

async function expectSystem(page: Page, system: 'metric' | 'us'): Promise<void> {
  await expect(page.locator(`#units-${system}`)).toBeChecked();
  const [shown, hidden] = system === 'us' ? [us(page), metric(page)] : [metric(page), us(page)];
  expect(await shown.count()).toBeGreaterThan(0);
  await expect(hidden).toHaveCount(0);
}

test('one choice holds on every page and at the next visit', async ({ page }) => {
  await page.goto('./');
  await expectSystem(page, 'metric');
  await page.getByRole('radio', { name: 'in, psi' }).click();
  await expectSystem(page, 'us');
  for (const address of ['lessons/stiff-spring/', 'reference/cautions/', './']) {
    await page.goto(address);
    await expectSystem(page, 'us');
  }
  await page.reload();
  await expectSystem(page, 'us');
});

test('the arrow keys work it', async ({ page }) => {
  await page.goto('./');
  await page.locator('#units-metric').focus();
  await page.keyboard.press('ArrowRight');
  await expectSystem(page, 'us');
  await page.keyboard.press('ArrowLeft');
  await expectSystem(page, 'metric');
});

test('each side is at least 44 px high and wide', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 700 });
  await page.goto('./');
  for (const label of await page.locator('.units label').all()) {
    const box = await label.boundingBox();
    expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(44);
  }
});

testAlone.describe('for a reader in the United States', () => {
  testAlone.use({ locale: 'en-US' });
  testAlone('it begins with their units', async ({ page }) => {
    await page.goto('./');
    await expectSystem(page, 'us');
  });
});

testAlone.describe('where nothing can be stored', () => {
  testAlone('it still switches', async ({ page }) => {
    await page.addInitScript(() =>
      Object.defineProperty(window, 'localStorage', {
        get: () => {
          throw new DOMException('denied', 'SecurityError');
        },
      }),
    );
    await page.goto('./');
    await page.locator('#units-us').click();
    await expectSystem(page, 'us');
  });
});

testAlone.describe('without script', () => {
  testAlone.use({ javaScriptEnabled: false });

  testAlone('the first page reads complete, and the switch works', async ({ page }) => {
    await page.goto('./');
    await expect(page.locator('.finding:visible')).not.toBeEmpty();
    await expect(page.locator('figure svg:visible').first()).toBeVisible();
    await expect(page.locator('.needs-script:visible')).toHaveCount(0);
    await expectSystem(page, 'metric');
    await page.locator('#units-us').click();
    await expectSystem(page, 'us');
  });
});
