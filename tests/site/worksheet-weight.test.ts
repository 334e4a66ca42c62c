/** What the worksheet fetches before anything is typed, and how soon it answers a keystroke. */
import { gzipSync } from 'node:zlib';
import { expect, test } from '@playwright/test';
import { openWorksheet, resultText } from './worksheet-page.ts';

const BUDGET = 60_000; // bytes of script, gzip, before there is anything to plot

test(`starts with at most ${BUDGET} bytes of script, without the plotting library`, async ({
  page,
}) => {
  const bodies: Promise<Buffer>[] = [];
  page.on('response', (response) => {
    if (response.request().resourceType() === 'script') bodies.push(response.body());
  });
  await openWorksheet(page);
  await page.waitForLoadState('networkidle');
  const weights = (await Promise.all(bodies)).map((body) => gzipSync(body, { level: 9 }).length);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  expect(total).toBeGreaterThan(10_000);
  expect(total).toBeLessThanOrEqual(BUDGET);
});

test('answers each keystroke at once, and asks no one outside', async ({ page, baseURL }) => {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await openWorksheet(page);
  await page.locator('.desk-offer button').first().click();
  await expect.poll(() => resultText(page, 'stress')).toContain('106.8 MPa');
  await page.locator('#box-target-stress').fill('12');
  const median = await page.locator('#box-target-stress').evaluate((box: HTMLInputElement) => {
    const times = ['120', '120.', '120.5', '118', '99'].map((typed) => {
      const start = performance.now();
      box.value = typed;
      box.dispatchEvent(new Event('input', { bubbles: true }));
      return performance.now() - start;
    });
    return times.sort((a, b) => a - b)[2];
  });
  expect(median).toBeLessThan(250);
  expect(
    asked.filter((url) => !/^(blob:|data:)/.test(url) && !url.startsWith(baseURL ?? '')),
  ).toEqual([]);
});
