/** The sheet on paper: nothing lies over anything or is cut off, no control is left, and no page stays half empty. */
import { expect, type Page } from '@playwright/test';
import { hydraulicSheet, longSheet } from './fullest-sheet.ts';
import { test } from './kept-page.ts';
import { pagesOf } from './paper.ts';
import { openFile, openWorksheet } from './worksheet-page.ts';

const PAPERS = { A5: [148, 210], A4: [210, 297], Letter: [215.9, 279.4] } as const; // mm

/** Brings a page into the state of the printer, on a sheet of paper with the margins of the sheet. */
async function onPaper(page: Page, [width, height]: readonly [number, number]): Promise<void> {
  const [across, down] = [width - 30, height - 32].map((side) => Math.floor((side * 96) / 25.4));
  await page.setViewportSize({ width: across ?? 0, height: down ?? 0 });
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await expect(page.locator('.part > details:not([open])')).toHaveCount(0);
}

/** Labels whose words reach into the box or the unit beside them, and units that reach over the edge of their place. */
const overlaps = (page: Page): Promise<readonly string[]> =>
  page.locator('.paper .field').evaluateAll((fields) =>
    fields.flatMap((field) => {
      const [label, box] = [field.querySelector('label'), field.querySelector('.field-box')];
      if (!label || !box?.checkVisibility()) return [];
      for (const hidden of label.querySelectorAll('.visually-hidden')) hidden.remove();
      const words = document.createRange();
      words.selectNodeContents(label);
      const [a, b] = [words.getBoundingClientRect(), box.getBoundingClientRect()];
      const lies = a.right > b.left + 1 && a.bottom > b.top + 1 && a.top < b.bottom - 1;
      const isCut = box.scrollWidth > box.clientWidth;
      return lies || isCut ? [`${label.textContent}: ${lies ? 'over its box' : 'cut'}`] : [];
    }),
  );

const PRINTED = { screw: longSheet(10), cylinder: hydraulicSheet(), empty: undefined } as const;

/** The most pages that a sheet of ten rows may take. */
const MOST_PAGES = { A5: 4, A4: 2, Letter: 2 } as const;

/** Shows the sheet on the screen in the units asked for; a width in millimeters names its unit where inches are shown. */
async function seeIn(page: Page, units: 'metric' | 'us', isFilled: boolean): Promise<void> {
  await page.emulateMedia({ media: null });
  await page.locator(`#units-${units}`).check({ force: true });
  const width = units === 'us' ? /^\d+ mm$/ : /^\d+$/;
  if (isFilled) await expect(page.locator('#box-band-bodyWidth')).toHaveValue(width);
  if (isFilled) await expect(page.locator('.result.is-there').first()).toBeAttached();
  await expect(page.locator('[data-worksheet="sheet"]')).not.toHaveAttribute('aria-busy');
}

async function takesNoMorePages(page: Page): Promise<void> {
  await page.waitForSelector('.stress-chart');
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  for (const [format, most] of Object.entries(MOST_PAGES))
    expect(pagesOf(await page.pdf({ format, preferCSSPageSize: true })), format).toBe(most);
}

async function liesOverNothing(page: Page): Promise<void> {
  for (const [format, paper] of Object.entries(PAPERS)) {
    await onPaper(page, paper);
    expect(await overlaps(page), format).toEqual([]);
    await expect(page.locator('.paper button').filter({ visible: true })).toHaveCount(0);
    await expect(page.getByText('Show the working').filter({ visible: true })).toHaveCount(0);
  }
}

for (const [name, sheet] of Object.entries(PRINTED))
  test(`on every paper nothing of a ${name} sheet lies over anything, and no control is left, in both systems`, async ({
    page,
  }) => {
    await openWorksheet(page);
    if (sheet) await openFile(page, sheet);
    for (const units of ['us', 'metric'] as const)
      await test.step(units, async () => {
        await seeIn(page, units, sheet !== undefined);
        if (name === 'screw') await takesNoMorePages(page);
        await liesOverNothing(page);
      });
  });

for (const place of [0, 1])
  test(`example ${place + 1} leaves no last page of the smallest paper with only a few lines`, async ({
    page,
  }) => {
    await openWorksheet(page);
    await page.locator('#units-us').check({ force: true });
    await page.locator('.desk-offer button').nth(place).click();
    await page.waitForSelector('.stress-chart');
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    const pdf = await page.pdf({ format: 'A5', preferCSSPageSize: true });
    expect(pagesOf(pdf)).toBe(MOST_PAGES.A5);
  });

test('a number typed with its own unit is printed without that of its box, words are printed whole', async ({
  page,
}) => {
  await openWorksheet(page);
  await page.locator('#units-metric').check({ force: true });
  const [own, bare] = ['#box-rig-gaugeLength', '#box-rig-graduation'].map((id) => page.locator(id));
  await own?.fill('60 cm');
  await bare?.fill('0.01');
  const note = 'the whole of a long note, '.repeat(7).trim();
  await page.locator('#box-ways-0-name').fill(note);
  await onPaper(page, PAPERS.A4);
  const unit = '.field-box:has(BOX) .unit';
  await expect(page.locator(unit.replace('BOX', '#box-rig-gaugeLength'))).toBeHidden();
  await expect(page.locator(unit.replace('BOX', '#box-rig-graduation'))).toBeVisible();
  const written = page.locator('.way .written-out');
  await expect(written).toHaveText(note);
  const [height, lines] = await written.evaluate((each) => [
    each.getBoundingClientRect().height,
    each.parentElement?.getBoundingClientRect().height ?? 0,
  ]);
  expect(height).toBeGreaterThan(40);
  expect(lines).toBeGreaterThanOrEqual(height ?? 0);
});

/** What the printer is told of a part of the sheet. */
const toldOf = (page: Page, part: string, rule: 'breakAfter' | 'breakInside') =>
  page
    .locator(part)
    .evaluateAll(
      (all, name) => [...new Set(all.map((each) => getComputedStyle(each)[name]))],
      rule,
    );

const TABLE = '.part:has(.caution) .readings';

test('no heading, no first rows and no caution’s first word stand alone at a page’s foot', async ({
  page,
}) => {
  await openWorksheet(page);
  await openFile(page, hydraulicSheet());
  await page.waitForSelector('.stress-chart');
  await onPaper(page, PAPERS.A5);
  expect(await toldOf(page, '.paper h3', 'breakAfter')).toEqual(['avoid']);
  expect(await toldOf(page, TABLE, 'breakInside')).toEqual(['avoid']);
  const [heading, caution] = await page
    .locator('.part:has(.caution)')
    .evaluate((part) =>
      ['summary', '.caution li'].map((each) => part.querySelector(each)?.getBoundingClientRect()),
    );
  expect(heading?.bottom).toBeGreaterThan(caution?.bottom ?? Number.NaN);
  await page.emulateMedia({ media: null });
  await openFile(page, longSheet(60));
  await expect(page.locator('#box-readings-59-torque')).toBeAttached();
  await expect(page.locator('.paper .result.is-there').first()).toBeAttached();
  await onPaper(page, PAPERS.A5);
  expect(await toldOf(page, TABLE, 'breakInside')).toEqual(['auto']);
  expect(await toldOf(page, '.readings tbody > tr:nth-child(-n + 2)', 'breakAfter')).toEqual([
    'avoid',
  ]);
});
