/** The setting card fills its sheet: letters that are read at arm's length, torques from two steps away, and no patch that is blank. */
import { expect, type Page } from '@playwright/test';
import { factsCut, gapsOf, numerals, smallest, spilled, widestGap } from './card-looks.ts';
import {
  bandsSheet,
  fullestSettledSheet,
  fullestSheet,
  hydraulicSheet,
  provisionalSheet,
} from './fullest-sheet.ts';
import { test } from './kept-page.ts';
import { onPaper, PAPERS, type Paper, printCard } from './paper.ts';
import { openExample, openFile, openWorksheet } from './worksheet-page.ts';

const PLAIN = { A5: 9, A4: 10, Letter: 10 } as const; // points, of the smallest letters
const FULL = 7;
const WIDEST_GAP = 0.04; // of the sheet's height
const FROM_TWO_STEPS = 1 / 30; // of the sheet's height, of a numeral

async function openCard(page: Page, sheet: object): Promise<void> {
  await openWorksheet(page);
  await openFile(page, sheet);
  await page.getByText('Look at the card').click();
}

/** Puts the card that is looked at in the printer, in the units asked for. */
async function printIn(page: Page, units: 'metric' | 'us'): Promise<void> {
  await page.emulateMedia({ media: 'screen' });
  await page.locator(`#units-${units}`).check({ force: true });
  await expect(page.locator('.card-torque strong').first()).toContainText(
    units === 'us' ? 'ft·lbf' : 'N·m',
  );
  await printCard(page);
}

/** The same, held: what belongs to a numeral is beside it, and what is beside it does not run into it. */
async function isTogether(page: Page, about: string): Promise<void> {
  for (const { before, behind, beside } of await gapsOf(page)) {
    expect(before, about).toBeGreaterThan(0);
    expect(before, about).toBeLessThan(1);
    expect(Math.abs(behind), about).toBeLessThan(2);
    expect(beside, about).toBeGreaterThanOrEqual(0);
  }
}

const papers = Object.keys(PAPERS) as readonly Paper[];

async function isLarge(page: Page, bands: number): Promise<void> {
  for (const paper of papers) {
    await onPaper(page, paper);
    expect(await smallest(page), paper).toBeGreaterThanOrEqual(PLAIN[paper]);
    expect(await widestGap(page), paper).toBeLessThan(WIDEST_GAP);
    expect(await spilled(page), paper).toEqual([]);
    await isTogether(page, paper);
    const heights = await numerals(page);
    expect(heights, paper).toHaveLength(bands);
    expect(Math.min(...heights), paper).toBeGreaterThan(FROM_TWO_STEPS);
  }
}

for (const bands of [1, 2, 3])
  test(`a card of ${bands} bands has large letters, larger torques and no blank patch, in both systems`, async ({
    page,
  }) => {
    await openCard(page, bandsSheet(bands - 1));
    for (const units of ['metric', 'us'] as const)
      await test.step(units, async () => {
        await printIn(page, units);
        await isLarge(page, bands);
      });
  });

test('a card of three bands, one provisional with a maker’s limit, has large letters, in both systems', async ({
  page,
}) => {
  await openCard(page, provisionalSheet());
  for (const units of ['metric', 'us'] as const)
    await test.step(units, async () => {
      await printIn(page, units);
      for (const paper of papers) {
        await onPaper(page, paper);
        expect(await smallest(page), paper).toBeGreaterThanOrEqual(PLAIN[paper]);
        expect(await widestGap(page), paper).toBeLessThan(WIDEST_GAP);
        expect(await spilled(page), paper).toEqual([]);
      }
    });
});

test('the card leads to what shares its sheet', async ({ page }) => {
  await openCard(page, bandsSheet(0));
  await page.getByRole('link', { name: 'Share the sheet' }).click();
  const share = page.getByRole('button', { name: 'Share', exact: true });
  await expect(share).toBeInViewport();
  await share.click();
  await expect(page.getByRole('button', { name: 'Copy link' })).toBeVisible();
});

for (const [name, sheet] of [
  ['fullest', fullestSheet()],
  ['fullest settled', fullestSettledSheet()],
] as const)
  test(`the ${name} card has no letters too small to read, and no blank patch`, async ({
    page,
  }) => {
    await openCard(page, sheet);
    await printIn(page, 'us');
    for (const paper of papers) {
      await onPaper(page, paper);
      expect(await smallest(page), paper).toBeGreaterThanOrEqual(FULL);
      expect(await widestGap(page), paper).toBeLessThan(WIDEST_GAP);
    }
  });

test('the torque is the largest of each row where bands are many', async ({ page }) => {
  await openCard(page, bandsSheet(5));
  await printIn(page, 'metric');
  const sizes = await page
    .locator('.card-bands tbody tr')
    .first()
    .evaluate((row) =>
      [...row.children].map((each) => Number.parseFloat(getComputedStyle(each).fontSize)),
    );
  const [name = 0, torque = 0, ...rest] = sizes;
  expect(torque).toBeGreaterThan(1.5 * Math.max(name, ...rest));
});

test('the measured band has its name on the card and in its results', async ({ page }) => {
  await openCard(page, provisionalSheet());
  await expect(page.locator('.card h3').first()).toHaveText(/^29\smm back to gullet × 1\smm\s*$/);
  await page.locator('#box-bandName').fill('Wide bimetal');
  await expect(page.locator('.card h3').first()).toContainText('Wide bimetal');
  await expect(page.locator('.card-facts')).toContainText(', Wide bimetal');
  await expect(page.locator('.card')).not.toContainText('measured band');
  await expect(page.locator('[data-result="setting"]')).toContainText('Wide bimetal: Torque for');
  await expect(page.locator('[data-answer="setting"] dt')).toHaveText(
    'What to set for Wide bimetal?',
  );
});

const WRENCH = 'Click wrench with a long name, 5 to 60 N·m';

test('the smallest paper has the facts one after the other, a long wrench whole, and larger torques for it', async ({
  page,
}) => {
  const sheet = bandsSheet(2) as { readonly typed: Record<string, string> };
  await openCard(page, { ...sheet, typed: { ...sheet.typed, wrench: WRENCH } });
  await printIn(page, 'us');
  await onPaper(page, 'A5');
  await expect(page.locator('.card-facts')).toContainText(WRENCH);
  expect(await factsCut(page)).toEqual([]);
  expect(Math.min(...(await numerals(page)))).toBeGreaterThan(FROM_TWO_STEPS * 1.9);
});

test('what a calculation says of the measured stress is whole on every paper', async ({ page }) => {
  const sheet = hydraulicSheet() as Record<'typed' | 'tables', Record<string, unknown>>;
  const short = { label: 'Lakeside shed', measuredOn: '28 Nov 2026', gauge: 'To 160 bar' };
  const bands = [
    ['name', 'bodyWidth', 'thickness', 'targetStress'],
    ['Narrow', '33', '1.1', '100'],
  ];
  const { readings } = sheet.tables;
  const tables = { readings, ways: [['name', 'pressure']], bands };
  await openCard(page, { ...sheet, tables, typed: { ...sheet.typed, ...short } });
  await page.locator('#units-us').check({ force: true });
  await expect(page.locator('.card-facts')).toContainText('calculation agrees');
  await printCard(page);
  for (const paper of papers) {
    await onPaper(page, paper);
    expect(await factsCut(page), paper).toEqual([]);
  }
});

test('a code is printed only where a camera reads it, and the smallest paper has none', async ({
  page,
}) => {
  await openWorksheet(page);
  await page.locator('.desk-offer button').first().click();
  await page.getByText('Look at the card').click();
  await printCard(page);
  const code = page.locator('.card .matrix-code');
  await onPaper(page, 'A5');
  await expect(code).toBeHidden();
  await expect(page.getByText('Scan for this sheet')).toBeHidden();
  for (const paper of ['A4', 'Letter'] as const) {
    await onPaper(page, paper);
    const module = await code.evaluate(
      (each: SVGSVGElement) => each.getBoundingClientRect().width / each.viewBox.baseVal.width,
    );
    expect((module * 25.4) / 96, paper).toBeGreaterThanOrEqual(0.4);
  }
});

test('a torque above the readings is no larger than the words that say so', async ({ page }) => {
  await openExample(page);
  await page.getByText('Look at the card').click();
  const sizeOf = (part: string) =>
    page
      .locator(part)
      .first()
      .evaluate((found) => Number.parseFloat(getComputedStyle(found).fontSize));
  const provisional = page.locator('.card-facts > div', { hasText: 'Measure first' });
  await expect(page.locator('.card-first')).toHaveText('Do not use yet.');
  await expect(provisional).toHaveText(/^Measure firstup to 14\.9.N·m: provisional$/);
  await expect(page.locator('.card-torques')).not.toContainText('14.9');
  const numeral = await sizeOf('.card-facts dd');
  expect(numeral).toBeLessThan(await sizeOf('.card-first'));
  await page.locator('#box-target-stress').fill('90');
  await expect(page.locator('.card-first')).toHaveCount(0);
  await expect(provisional).toHaveCount(0);
  expect(await sizeOf('.card-torque .card-number')).toBeGreaterThan(3 * numeral);
});
