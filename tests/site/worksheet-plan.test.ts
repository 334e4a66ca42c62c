/** A measurement planned on the sheet: what it would reach, what would help, and the paper to take along. */
import { expect, type Page, test } from '@playwright/test';
import { barriersWithin } from './barriers.ts';
import { openLive } from './open-live.ts';
import { openWorksheet } from './worksheet-page.ts';

const MARGIN = 10; // mm
const PAPERS = { A4: [210, 297], Letter: [215.9, 279.4] } as const; // mm

/** Pages of a PDF as this browser writes it: one uncompressed object each. */
const pagesOf = (pdf: Buffer): number =>
  (pdf.toString('latin1').match(/\/Type \/Page\b/g) ?? []).length;

async function openPlan(page: Page): Promise<void> {
  await openWorksheet(page);
  await page.locator('.desk-offer button').first().click();
  const fold = page.getByText('Plan your measurement before you go out');
  if (!(await fold.isVisible())) await page.locator('#rig > details > summary').click();
  await fold.click();
  await expect(page.locator('.plan')).toBeVisible();
}

async function printPlan(page: Page): Promise<void> {
  await page.emulateMedia({ media: 'screen' });
  await page.evaluate(() => {
    globalThis.print = () => {};
  });
  await page.getByRole('button', { name: 'Print a sheet to take along' }).click();
}

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

test('says what the plan would reach, and what would help most, best first', async ({ page }) => {
  await openPlan(page);
  await page.locator('#box-plan-steps').fill('8');
  await expect(page.locator('.plan-says')).toContainText(/know the stress to ±\d+ % or better/, {
    timeout: 40_000,
  });
  await expect(page.locator('.plan').getByText('Trying')).toHaveCount(0, { timeout: 40_000 });
  const offers = await page.locator('.plan .offers li').allTextContents();
  expect(offers.length).toBeGreaterThan(1);
  const widths = offers.map((offer) => Number(/±(\d+)/.exec(offer)?.[1]));
  expect(widths).toEqual([...widths].sort((a, b) => a - b));
  expect(await barriersWithin(page, '.plan')).toEqual([]);
});

test('is one step from the top of the sheet, and from a link to it', async ({ page }) => {
  for (const go of [
    async () => {
      await openLive(page, 'worksheet/');
      await page.getByRole('link', { name: 'Plan your measurement first' }).first().click();
    },
    () => openLive(page, 'worksheet/#plan'),
  ]) {
    await page.goto('about:blank');
    await go();
    await expect(page.locator('.plan')).toBeVisible();
    await expect(page.locator('#plan > summary')).toBeInViewport();
    await expect(page.getByText('damaged')).toHaveCount(0);
    await page.evaluate(() => localStorage.clear());
  }
});

test('beyond a maker’s limit says STOP, on the page and on the paper to take along', async ({
  page,
}) => {
  await openPlan(page);
  await page.locator('#box-plan-topTorque').fill('20');
  await expect(page.locator('.plan .guard.is-stop')).toHaveCount(0);
  await page.locator('#box-target-makerLimitStress').fill('100');
  const stop = page.locator('.plan .guard.is-stop');
  await expect(stop).toHaveText(
    /^STOP\. At 20\.0\sN·m the stress would be above what the band’s maker allows, 100\sMPa\. Go no higher than \d+(\.\d)?\sN·m/,
    { timeout: 40_000 },
  );
  await printPlan(page);
  await page.emulateMedia({ media: 'print' });
  const printed = page.locator('.along-page .along-limit');
  await expect(printed).toHaveText((await stop.textContent()) ?? 'nothing');
  await expect(printed).toBeVisible();
});

test('tells what a plan cannot be, and prints none', async ({ page }) => {
  await openPlan(page);
  await page.locator('#box-plan-steps').fill('4');
  await expect(page.locator('.plan').getByText('Plan 6 to 30 steps')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Print a sheet to take' })).toBeDisabled();
});

for (const [series, steps] of [
  [1, 10],
  [2, 30],
  [5, 12],
] as const)
  test(`${series} series of ${steps} steps print two to a page, whole`, async ({ page }) => {
    await openPlan(page);
    await page.locator('#box-plan-series').fill(String(series));
    await page.locator('#box-plan-steps').fill(String(steps));
    const pages = Math.ceil(series / 2);
    for (const [format, paper] of Object.entries(PAPERS)) {
      await printPlan(page);
      await expect(page.locator('.along-series')).toHaveCount(series);
      await expect(page.locator('.along-series tbody tr')).toHaveCount(series * steps);
      await expect(page.locator('.along-sketches svg')).toHaveCount(3);
      const overflow = await overflowOn(page, paper);
      expect(overflow, format).toEqual(overflow.map(() => 0));
      await expect(page.locator('.paper')).toBeHidden();
      expect(pagesOf(await page.pdf({ format, preferCSSPageSize: true })), format).toBe(pages);
    }
    await expect(page.locator('.along-page')).toHaveCount(0);
  });
