/** The class board in a browser: a class's files at once, what is broken, links, the keyboard, and nothing that leaves. */
import { readFileSync } from 'node:fs';
import { expect, type Page, test as testAlone } from '@playwright/test';
import { sealed } from '../../src/worksheet/io/file.ts';
import { packed } from '../../src/worksheet/io/packing.ts';
import { CLASS, classSheets, learnersSheet } from '../teaching/board/class.ts';
import { arrivals } from './arrivals.ts';
import { barriers, WCAG } from './barriers.ts';
import { test } from './kept-page.ts';

const SCRIPT = 45_000; // bytes, gzip
const OLD = 'tests/form/fixtures/version-1/full-us.json';
const json = (name: string, text: string) => ({
  name: `${name}.json`,
  mimeType: 'application/json',
  buffer: Buffer.from(text),
});

async function openBoard(page: Page): Promise<void> {
  await page.goto('./teach/board/');
  await page.waitForSelector('html[data-live="ready"]');
}

test('a class of files is on the board at once; a broken one is named, an old one opens', async ({
  page,
}) => {
  await openBoard(page);
  const sheets = [...classSheets(2), learnersSheet('Gus', 77, { seed: 2 })];
  const files = await Promise.all(
    sheets.map(async (sheet, at) => json(`sheet-${at}`, await sealed({ sheet }))),
  );
  const requests: string[] = [];
  const broken = json('torn', files[0]?.buffer.toString().slice(0, 500) ?? '');
  const old = json('old', readFileSync(OLD, 'utf8'));
  page.on('request', (request) => requests.push(`${request.method()} ${request.url()}`));
  await page.locator('#board-files').setInputFiles([...files, broken, old]);
  const rows = page.locator('.board-table tbody tr');
  await expect(rows).toHaveCount(CLASS.length + 2);
  await expect(page.locator('.board-left')).toContainText('torn.json: It is damaged.');
  await expect(page.getByRole('rowheader', { name: 'Gus (2)' })).toBeVisible();
  await expect(page.getByRole('rowheader', { name: /O'Brien/ })).toBeVisible();
  const charts = page.locator('.board-plot svg');
  await expect(charts).toHaveCount(2);
  const points = await charts.first().locator('.class-point circle').count();
  expect(points).toBeGreaterThanOrEqual(CLASS.length + 1);
  const { origin } = new URL(page.url());
  expect(requests.filter((each) => !each.startsWith(`GET ${origin}/assets/`))).toEqual([]);
  await page.locator('#units-us').check({ force: true });
  await expect(charts.first()).toContainText('stress, psi');
  await page.locator('#units-metric').check({ force: true });
  await expect(charts.first()).toContainText('stress, MPa');
  expect(await barriers(page, WCAG)).toEqual([]);
  for (const width of [320, 390, 1280]) {
    await page.setViewportSize({ width, height: 720 });
    await expect
      .poll(() => page.evaluate(() => document.documentElement.scrollWidth))
      .toBeLessThanOrEqual(width);
  }
});

test('what the charts need is there before the first file, untouched', async ({ page }) => {
  await openBoard(page);
  const isFetched = () =>
    page.evaluate(() =>
      performance.getEntriesByType('resource').some(({ name }) => /\/assets\/Charts\./.test(name)),
    );
  await expect.poll(isFetched, { timeout: 15_000 }).toBe(true);
});

test('two learners of one name and a broken file: both stand there, the file is named; a reload keeps what was promised, and no name', async ({
  page,
}) => {
  await openBoard(page);
  await page.locator('#units-us').check({ force: true });
  const [one, other] = await Promise.all(
    [0, 1].map(async (at) => sealed({ sheet: learnersSheet('Ann Alike', at) })),
  );
  const files = [
    json('one', `${one}`),
    json('torn', `${one}`.slice(0, 400)),
    json('other', `${other}`),
  ];
  await page.locator('#board-files').setInputFiles(files);
  await expect(page.locator('.board-table tbody tr')).toHaveCount(2);
  await expect(page.getByRole('rowheader', { name: 'Ann Alike (2)' })).toBeVisible();
  await expect(page.locator('.board-left')).toContainText('torn.json: It is damaged.');
  await page.reload();
  await page.waitForSelector('html[data-live="ready"]');
  await expect(page.getByText('nothing is kept when you close the page')).toBeVisible();
  await expect(page.locator('.board-table')).toHaveCount(0);
  await expect(page.locator('#units-us')).toBeChecked();
  const kept = await page.evaluate(async () => {
    const databases = (await indexedDB.databases()).map(({ name }) => name);
    return JSON.stringify([{ ...localStorage }, { ...sessionStorage }, databases]);
  });
  expect(kept).not.toContain('Ann');
  await page.locator('#board-files').setInputFiles(files);
  await expect(page.locator('.board-table tbody tr')).toHaveCount(2);
});

test('links are pasted and sheets removed by keyboard alone; a bad link stays in its box', async ({
  page,
}) => {
  await openBoard(page);
  const links = await Promise.all(
    [0, 1, 2].map(async (at) => `https://a.example/#${await packed(learnersSheet('Ann', at))}`),
  );
  const box = page.getByLabel('Links to worksheets, one a line');
  await box.fill([links[0], 'not a link', ...links.slice(1)].join('\n'));
  await box.focus();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page.locator('.board-said')).toHaveText(/^3 sheets were added\. 1 was left out/);
  await expect(box).toHaveValue('not a link');
  await expect(page.locator('.board-left')).toContainText('link 2: It is damaged');
  await expect(page.locator('.board-says')).toContainText('The class differs by');
  await page.getByRole('button', { name: 'Remove Ann (2)' }).press('Enter');
  await expect(page.locator('.board-table tbody tr')).toHaveCount(2);
  await page.getByRole('button', { name: 'Clear the board' }).press('Enter');
  await expect(page.locator('.board-table')).toHaveCount(0);
  await expect(page.locator('#board-files')).toBeFocused();
});

testAlone(`the board starts with at most ${SCRIPT} bytes of script`, async ({ page }) => {
  const { script } = await arrivals(page, () => openBoard(page));
  expect(script).toBeGreaterThan(5_000);
  expect(script).toBeLessThanOrEqual(SCRIPT);
});
