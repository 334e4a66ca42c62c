/** A measurement planned on the sheet: what it would reach, what would help, and the paper to take along. */
import { expect, type Page, test } from '@playwright/test';
import { barriersWithin } from './barriers.ts';
import { openLive } from './open-live.ts';
import { openWorksheet } from './worksheet-page.ts';

const MARGIN = 10; // mm
const PAPERS = { A4: [210, 297], A5: [148, 210], Letter: [215.9, 279.4] } as const; // mm
const LEAST_ROW = { A4: 5, A5: 3.5, Letter: 4.5 } as const; // mm, for a pen

type Paper = keyof typeof PAPERS;

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

/** A plan on a sheet with nothing in it. */
async function openEmptyPlan(page: Page): Promise<void> {
  await openLive(page, 'worksheet/#plan');
  await expect(page.locator('.plan')).toBeVisible();
}

/** What stands in a place of the sheet to take along, with plain spaces. */
async function printedTexts(page: Page, place: string): Promise<readonly string[]> {
  const texts = await page.locator(`.along-page ${place}`).allTextContents();
  return texts.map((text) => text.replace(/\s+/g, ' ').trim());
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

/** The height of the lowest row for the pen, mm. */
const lowestRow = (page: Page): Promise<number> =>
  page
    .locator('.along-series tbody tr')
    .evaluateAll((rows) =>
      Math.min(...rows.map((row) => (row.getBoundingClientRect().height * 25.4) / 96)),
    );

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
    /^STOP\. At 20\sN·m the stress would be above what the band’s maker allows, 100\sMPa\. Go no higher than \d+(\.\d)?\sN·m/,
    { timeout: 40_000 },
  );
  await printPlan(page);
  await page.emulateMedia({ media: 'print' });
  const printed = page.locator('.along-page .along-limit');
  await expect(printed).toHaveText((await stop.textContent()) ?? 'nothing');
  await expect(printed).toBeVisible();
});

test('says the stress at the top, and warns of one above common practice, on the page and on the paper', async ({
  page,
}) => {
  await openPlan(page);
  const warning = page
    .locator('.plan .guard.is-warn')
    .filter({ hasText: 'small mills usually use' });
  await page.locator('#box-plan-topTorque').fill('13');
  await expect(page.locator('.plan-top')).toHaveText(
    /^At 13\sN·m the band should carry \d+\s±\s\d+\sMPa, by your readings\.$/,
    { timeout: 40_000 },
  );
  await expect(warning).toHaveCount(0);
  await page.locator('#box-plan-topTorque').fill('24');
  await expect(warning).toHaveText(
    /^At 24\sN·m the stress may reach \d+\sMPa, uncertainty included\..* Plan a top of \d+(\.\d)?\sN·m or less/,
    { timeout: 40_000 },
  );
  const [top, said] = await Promise.all([
    page.locator('.plan-top').textContent(),
    warning.textContent(),
  ]);
  await printPlan(page);
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.along-page .along-top')).toHaveText(top ?? 'nothing');
  await expect(page.locator('.along-page .along-limit')).toHaveText(said ?? 'nothing');
  await expect(page.locator('.along-page .along-limit')).toBeVisible();
});

test('prints the settings that the page names, and what the sheet knows of the mill', async ({
  page,
}) => {
  await openPlan(page);
  await page.locator('#box-plan-topTorque').fill('14');
  await expect(page.locator('.plan-top')).toContainText('At 14', { timeout: 40_000 });
  const tried = (await page.locator('.plan-reach .hint').first().textContent()) ?? '';
  await printPlan(page);
  const settings = await printedTexts(page, 'tbody th');
  expect(settings).toHaveLength(10);
  expect(tried).toContain(`The 10 steps are ${settings.join(', ')}`);
  for (const setting of settings) expect((2 * Number(setting)) % 1).toBe(0);
  const label = await page.locator('#box-label').inputValue();
  expect((await printedTexts(page, '.along-head')).join()).toContain(label);
  const facts = (await printedTexts(page, '.along-facts > div')).join('\n');
  for (const path of ['mill-wheelDiameter1', 'target-stress', 'bands-0-bodyWidth'])
    expect(facts).toContain(await page.locator(`#box-${path}`).inputValue());
  expect(facts).toMatch(/Band maker’s limit$/m); // a line for the pen
});

test('asks what tightens the band, and speaks of a cylinder where that is it', async ({ page }) => {
  await openEmptyPlan(page);
  const plan = page.locator('.plan');
  await expect(plan.getByLabel('Top torque')).toBeVisible();
  await plan.getByRole('radio', { name: 'a hydraulic cylinder' }).check();
  await expect(plan.getByLabel('Top pressure')).toBeVisible();
  await expect(page.locator('#start').getByLabel('Piston diameter')).toBeAttached();
  await printPlan(page);
  const cautions = (await printedTexts(page, '.along-cautions')).join();
  expect(cautions).toContain('Pump slowly');
  expect(cautions).not.toMatch(/turn|handle|torque/i);
});

test('without a top leaves the settings to the pen, and says how to find them', async ({
  page,
}) => {
  await openEmptyPlan(page);
  await page.locator('#box-plan-steps').fill('8');
  await printPlan(page);
  await expect(page.locator('.along-series tbody tr')).toHaveCount(8);
  expect((await printedTexts(page, 'tbody')).join('')).toBe('');
  await expect(page.locator('.along-finding')).toHaveText(
    /^First choose a top torque .* go up in 8 even steps\./,
  );
});

test('prints no plan before its warnings are known', async ({ page }) => {
  await openPlan(page);
  const print = page.getByRole('button', { name: 'Print a sheet to take' });
  await expect(print).toBeEnabled({ timeout: 40_000 });
  await page.locator('#box-plan-topTorque').fill('20');
  await expect(print).toBeDisabled();
  await expect(print).toBeEnabled({ timeout: 40_000 });
});

test('tells what a plan cannot be, and prints none', async ({ page }) => {
  await openPlan(page);
  await page.locator('#box-plan-steps').fill('4');
  await expect(page.locator('.plan').getByText('Plan 6 to 30 steps')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Print a sheet to take' })).toBeDisabled();
});

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

for (const [series, steps, pages, columns] of [
  [1, 10, 1, 1],
  [2, 12, 1, 2],
  [2, 30, 2, 4],
  [5, 12, 3, 5],
] as const)
  test(`${series} series of ${steps} steps print whole, two columns to a page`, async ({
    page,
  }) => {
    await openPlan(page);
    await fillMostRoom(page);
    await page.locator('#box-plan-series').fill(String(series));
    await page.locator('#box-plan-steps').fill(String(steps));
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
