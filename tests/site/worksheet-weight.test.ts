/** What the worksheet fetches before anything is typed, and how soon it answers a keystroke. */
import { expect, test } from '@playwright/test';
import { arrivals, expectLight } from './arrivals.ts';
import { openLive } from './open-live.ts';
import { openWorksheet, resultText } from './worksheet-page.ts';

const SCRIPT = 60_000; // bytes, gzip, before there is anything to plot
const WHOLE = 130_000; // bytes of a first visit: its slanted face comes with the results

test(`starts with at most ${SCRIPT} bytes of script, without the plotting library`, async ({
  page,
}) => {
  expectLight(await arrivals(page, () => openLive(page, 'worksheet/')), SCRIPT, WHOLE);
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
