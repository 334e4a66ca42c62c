/** The sheet to take along on each paper: whole, and with rows for a pen. */
import { expect, type Page } from '@playwright/test';
import { test } from './kept-page.ts';
import { pagesOf } from './paper.ts';
import { openPlan, printPlan } from './plan-page.ts';

const MARGIN = 10; // mm
const PAPERS = { A4: [210, 297], A5: [148, 210], Letter: [215.9, 279.4] } as const; // mm
const LEAST_ROW = { A4: 5, A5: 3.5, Letter: 4.5 } as const; // mm, for a pen

type Paper = keyof typeof PAPERS;

/** How far the contents of each page of it reach beyond its paper, px. */
async function overflowOn(page: Page, paper: readonly number[]): Promise<readonly number[]> {
  await page.emulateMedia({ media: 'print' });
  const [width = 0, height = 0] = paper.map((side) =>
    Math.floor(((side - 2 * MARGIN) * 96) / 25.4),
  );
  await page.setViewportSize({ width, height });
  return page.locator('.along-page').evaluateAll((pages) =>
    pages.flatMap((each) => {
      const bottom = each.getBoundingClientRect().bottom;
      const lowest = Math.max(
        ...[...each.querySelectorAll('tr')].map((row) => row.getBoundingClientRect().bottom),
      );
      return [each.scrollWidth - each.clientWidth, Math.max(0, Math.floor(lowest - bottom))];
    }),
  );
}

/** The height of the lowest row for the pen, mm. */
const lowestRow = (page: Page): Promise<number> =>
  page
    .locator('.along-series tbody tr')
    .evaluateAll((rows) =>
      Math.min(...rows.map((row) => (row.getBoundingClientRect().height * 25.4) / 96)),
    );

/** Fills in what takes most room on the paper: limits that are passed, another thread, other bands. */
async function fillMostRoom(page: Page): Promise<void> {
  for (const [path, text] of [
    ['target-makerLimitStress', '280'],
    ['target-makerLimitWheelForce', '16000'],
    ['target-yieldStrength', '800'],
    ['plan-topTorque', '60'],
  ])
    await page.locator(`#box-${path}`).fill(text ?? '');
  await expect(page.locator('.plan .guard.is-stop')).toBeVisible({ timeout: 40_000 });
  await expect(page.locator('.plan .guard.is-warn')).toBeVisible();
}

/** Series, steps of each, and the pages and columns that these take. */
const PLANS = [
  [1, 10, 1, 1],
  [2, 12, 1, 2],
  [2, 30, 2, 4],
  [5, 12, 3, 5],
] as const;

async function plan(page: Page, series: number, steps: number): Promise<void> {
  await page.emulateMedia({ media: 'screen' });
  await page.locator('#box-plan-series').fill(String(series));
  await page.locator('#box-plan-steps').fill(String(steps));
}

test('every plan prints whole, two columns to a page', async ({ page }) => {
  test.setTimeout(180_000);
  await openPlan(page);
  await fillMostRoom(page);
  for (const [series, steps, pages, columns] of PLANS)
    await test.step(`${series} series of ${steps} steps`, async () => {
      await plan(page, series, steps);
      for (const [format, paper] of Object.entries(PAPERS)) {
        await printPlan(page);
        await expect(page.locator('.along-series')).toHaveCount(columns);
        await expect(page.locator('.along-series tbody tr')).toHaveCount(series * steps);
        await expect(page.locator('.along-sketches svg')).toHaveCount(3);
        const overflow = await overflowOn(page, paper);
        expect(overflow, format).toEqual(overflow.map(() => 0));
        expect(await lowestRow(page), format).toBeGreaterThan(LEAST_ROW[format as Paper]);
        await expect(page.locator('.paper')).toBeHidden();
        expect(pagesOf(await page.pdf({ format, preferCSSPageSize: true })), format).toBe(pages);
      }
      await expect(page.locator('.along-page')).toHaveCount(0);
    });
});
