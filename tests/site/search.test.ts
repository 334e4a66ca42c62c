/** The page of search in a real browser: found on the device, kept in the address, and of use without script. */
import { expect, test as testAlone } from '@playwright/test';
import { arrivals } from './arrivals.ts';
import { test } from './kept-page.ts';
import { openLive } from './open-live.ts';

const SCRIPT = 30_000; // bytes, gzip, before the box is touched

testAlone(
  'a question in one’s own words leads to its answer, and stays in the address',
  async ({ page }) => {
    const { script } = await arrivals(page, () => openLive(page, './search/'));
    expect(script).toBeLessThanOrEqual(SCRIPT);
    const box = page.getByRole('searchbox');
    await box.fill('my blade makes wavy boards');
    const first = page.locator('[data-found] li').first();
    await expect(first.getByRole('link')).toHaveText('Why does my band wander or cut waves?');
    await expect(page.locator('[data-asked]')).toBeHidden();
    await page.reload();
    await expect(box).toHaveValue('my blade makes wavy boards');
    await first.getByRole('link').click();
    await expect(page.locator('h1')).toHaveText('What tension buys');
  },
);

test('what is not found is told, and what is broken in the address does no harm', async ({
  page,
}) => {
  await openLive(page, './search/#q=%E0%A4%A');
  const box = page.getByRole('searchbox');
  await box.fill('zzzqqq');
  await expect(page.locator('[data-said]')).toHaveText(
    'Nothing found for “zzzqqq”. Try fewer or other words.',
  );
  await box.fill('<img src=x onerror=alert(1)>');
  await expect(page.locator('[data-found] img')).toHaveCount(0);
  await box.fill('');
  await expect(page.locator('[data-asked]')).toBeVisible();
});

test('without script the questions that people ask are there with their answers', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({
    javaScriptEnabled: false,
    ...(baseURL && { baseURL }),
  });
  const page = await context.newPage();
  await page.goto('./search/');
  await expect(page.getByRole('searchbox')).toBeHidden();
  await page.getByRole('link', { name: 'Where is zero on a band that was coiled?' }).click();
  await expect(page.locator('h1')).toHaveText('Where is zero');
  await context.close();
});
