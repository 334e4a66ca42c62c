/** The setting card prints on one sheet, alone, on every size of paper, whatever is on it; the sheet prints whole, whatever is folded. */
import { expect, type Page } from '@playwright/test';
import {
  fullestSettledSheet,
  fullestSheet,
  hydraulicSheet,
  longSheet,
  provisionalSheet,
} from './fullest-sheet.ts';
import { test } from './kept-page.ts';
import { openLive } from './open-live.ts';
import { onPaper, PAPERS, type Paper, pagesOf, printCard } from './paper.ts';
import { openExample, openFile, openWorksheet } from './worksheet-page.ts';

const FORMATS = Object.keys(PAPERS) as readonly Paper[];

async function openFullest(page: Page, sheet = fullestSheet()): Promise<void> {
  await openWorksheet(page);
  await openFile(page, sheet);
  await expect(page.locator('#box-label')).toHaveValue(/^Mill very long/);
}

/** How far the card's contents reach beyond its frame on a paper, px. */
async function overflowOn(page: Page, paper: Paper) {
  await onPaper(page, paper);
  return page.locator('.card').evaluate((card) => ({
    across: card.scrollWidth - card.clientWidth,
    down: card.scrollHeight - card.clientHeight,
  }));
}

const SYSTEMS = ['metric', 'us'] as const;
type Units = (typeof SYSTEMS)[number];

/** A cylinder's card with its large numeral, in the units asked for. */
async function seeHydraulicIn(page: Page, units: Units): Promise<void> {
  await page.locator(`#units-${units}`).check({ force: true });
  await expect(page.locator('.card-torque > span')).toHaveText('Set to');
  await expect(page.locator('.card-torque strong')).toHaveText(units === 'us' ? /psi$/ : /bar$/);
  await expect(page.locator('.card-bands td').first()).toBeVisible();
}

/** A card whose first torque is held back, beside two that are not, in the units asked for. */
async function seeProvisionalIn(page: Page, units: Units): Promise<void> {
  await page.locator(`#units-${units}`).check({ force: true });
  await expect(page.locator('.card')).toContainText(/Do not use yet\./);
  await expect(page.locator('.card-torques > section .card-limit dt')).toHaveText(
    Array(3).fill(/^Never above/),
  );
  const unit = units === 'us' ? 'ft·lbf' : 'N·m';
  await expect(page.locator('.card-torque strong').first()).toContainText(unit);
}

const CAUTIONS = 6;

/** How many of the cautions stand whole within the card's frame. */
const cautionsInside = (page: Page): Promise<number> =>
  page.locator('.card').evaluate((card) => {
    const { top, bottom, left, right } = card.getBoundingClientRect();
    return [...card.querySelectorAll('.card-cautions li')].filter((each) => {
      const at = each.getBoundingClientRect();
      const isWithin = at.top > top && at.bottom < bottom && at.left > left && at.right < right;
      return isWithin && at.height > 0 && each.checkVisibility({ visibilityProperty: true });
    }).length;
  });

const NUMBERS =
  '.card-torque *, .card-torques dl *, .card-bands td, .card-ways :is(dt, dd), .card-facts dt, .card-log th';

/** The parts of the card with a number in them that do not fit where they stand. */
const cutOff = (page: Page): Promise<readonly string[]> =>
  page
    .locator('.card')
    .evaluate(
      (card, numbers) =>
        [...card.querySelectorAll(numbers)]
          .filter((each) => each.scrollWidth > each.clientWidth && each.clientWidth > 0)
          .map(({ textContent }) => textContent ?? ''),
      NUMBERS,
    );

/** On a phone and a laptop the card that is looked at shows every number and every caution whole. */
async function isWholeOnScreens(page: Page): Promise<void> {
  for (const width of [390, 1280]) {
    await page.setViewportSize({ width, height: 844 });
    expect(await cutOff(page), `${width}`).toEqual([]);
    expect(await cautionsInside(page), `${width}`).toBe(CAUTIONS);
  }
}

/** On each paper the card in the printer keeps within its frame with every caution. */
async function isWholeOnPapers(page: Page, number: 'whole' | 'any' = 'any'): Promise<void> {
  await expect(page.locator('.card-code')).toContainText(/Scan|too long/);
  for (const format of FORMATS) {
    expect(await overflowOn(page, format), format).toEqual({ across: 0, down: 0 });
    if (number === 'whole') expect(await cutOff(page), format).toEqual([]);
    expect(await cautionsInside(page), format).toBe(CAUTIONS);
  }
}

async function isOnePage(page: Page): Promise<void> {
  for (const format of FORMATS) {
    await page.evaluate(() => document.documentElement.setAttribute('data-print', 'card'));
    expect(pagesOf(await page.pdf({ format, preferCSSPageSize: true })), format).toBe(1);
  }
}

async function isWholeEverywhere(page: Page): Promise<void> {
  await isWholeOnScreens(page);
  await printCard(page);
  await isWholeOnPapers(page, 'whole');
  await isOnePage(page);
}

test('the card of the fullest sheet in US units is whole on a phone, a laptop and one page of each paper', async ({
  page,
}) => {
  await openFullest(page, fullestSettledSheet());
  await page.locator('#units-us').check({ force: true });
  await page.getByText('Look at the card').click();
  await expect(page.locator('.card-bands td small').first()).toBeVisible();
  await expect(page.locator('.card-same').first()).toContainText('in·lbf');
  await isWholeEverywhere(page);
});

test('a cylinder’s card is whole on a phone, a laptop and one page of each paper, in both systems', async ({
  page,
}) => {
  await openFullest(page, hydraulicSheet());
  await page.getByText('Look at the card').click();
  for (const units of SYSTEMS)
    await test.step(units, async () => {
      await page.emulateMedia({ media: 'screen' });
      await seeHydraulicIn(page, units);
      await isWholeEverywhere(page);
    });
});

test('a card whose first torque is held back is whole on one page of each paper, in both systems', async ({
  page,
}) => {
  await openWorksheet(page);
  await openFile(page, provisionalSheet());
  await page.getByText('Look at the card').click();
  for (const units of SYSTEMS)
    await test.step(units, async () => {
      await page.emulateMedia({ media: 'screen' });
      await seeProvisionalIn(page, units);
      await printCard(page);
      await isWholeOnPapers(page);
      await isOnePage(page);
    });
});

test('the fullest card is whole on one page of each paper, and tells by its number what it leaves to the sheet', async ({
  page,
}) => {
  await openFullest(page);
  await printCard(page);
  await expect(page.locator('.card-more')).toHaveCount(3); // once the worker has answered
  const left = await page.locator('.card-more').allTextContents();
  expect(left).toEqual([
    expect.stringMatching(/^And \d+ more bands on the sheet\.$/),
    expect.stringMatching(/^And \d+ more warnings on the sheet\.$/),
    expect.stringMatching(/^And \d+ more ways on the sheet\.$/),
  ]);
  const rows = await page.locator('.card-bands tbody tr').count();
  expect(left[0]).toContain(` ${12 - rows} `);
  await isWholeOnPapers(page);
  await isOnePage(page);
});

test('a card prints whole on one page of each paper without the sheet, and the sheet after it without the card', async ({
  page,
}) => {
  await openExample(page);
  await printCard(page);
  await expect(page.locator('.card')).toBeVisible();
  await expect(page.locator('.paper')).toBeHidden();
  await isWholeOnPapers(page);
  await page.pdf({ format: 'A4', preferCSSPageSize: true }); // ends the printing
  await expect(page.locator('.paper')).toBeVisible();
  await expect(page.locator('.card')).toBeHidden();
  expect(pagesOf(await page.pdf({ format: 'A4', preferCSSPageSize: true }))).toBeGreaterThan(1);
  await isOnePage(page);
});

/** What is filled in and would not be on the paper. */
const unseen = (page: Page) =>
  page
    .locator('.paper input.box')
    .evaluateAll((boxes) =>
      (boxes as HTMLInputElement[])
        .filter((box) => box.value !== '' && !box.checkVisibility({ visibilityProperty: true }))
        .map(({ id }) => id),
    );

test('a sheet of 60 rows, every part and fold closed, prints whole on at most 4 pages', async ({
  page,
}) => {
  await openLive(page, 'worksheet/');
  await openFile(page, longSheet(60));
  const foldAll = (open: boolean) =>
    page.evaluate((isOpen) => {
      for (const each of document.querySelectorAll('details')) each.open = isOpen;
    }, open);
  await foldAll(true);
  await page.waitForSelector('.stress-chart');
  await foldAll(false);
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await expect(page.locator('.part-inside').filter({ visible: true })).toHaveCount(8); // not the empty log
  await expect(page.locator('#box-readings-59-torque')).toBeVisible();
  expect(await unseen(page)).toEqual([]);
  await expect(page.locator('.stress-chart')).toBeVisible();
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await expect(page.locator('.part > details[open]')).toHaveCount(0);
  for (const format of ['A4', 'Letter'])
    expect(pagesOf(await page.pdf({ format, preferCSSPageSize: true })), format).toBeLessThan(5);
});

test('what stands in the log is printed though its part was never opened', async ({ page }) => {
  await openWorksheet(page);
  await page.locator('#box-log-0-date').fill('2026-11-29');
  await page.getByRole('button', { name: 'Close all parts' }).click();
  await page.reload();
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await expect(page.locator('#box-log-0-date')).toBeVisible();
});
