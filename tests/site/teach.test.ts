/** The teaching pack in a browser: sheets from a link, what a hostile link leaves, paper, and a class's gain. */
import { expect, type Page, test as testAlone } from '@playwright/test';
import { digestOf } from '../teaching/sheets/digest.ts';
import GOLDEN from '../teaching/sheets/golden.json' with { type: 'json' };
import { arrivals } from './arrivals.ts';
import { test } from './kept-page.ts';
import { openLive } from './open-live.ts';

const SCRIPT = 32_000; // bytes, gzip
const EVERY_LESSON =
  'handle-to-band,stiff-spring,steel-in-the-section,screw-takes-its-cut,counting-turns,round-the-wheel,what-tension-buys,where-is-zero,a-few-hundredths,when-it-warms,theory-meets-measurement,second-opinion';

/** All that sheets and key say, in the order of `textOfSheets`. */
const wholeText = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const texts = (root: Element, selector: string) =>
      [...root.querySelectorAll(selector)].map((each) => each.textContent ?? '');
    const keys = [...document.querySelectorAll('.key-question')];
    return [...document.querySelectorAll('.problem-sheet')]
      .flatMap((sheet, at) => {
        const seed = texts(sheet, 'h2')[0]?.replace('Problem sheet ', '');
        return texts(sheet, '.question > p:first-child').map((ask, place) => {
          const key = keys[place] as Element;
          const [, unit = ''] = /, (.*)$/.exec(texts(key, 'thead th')[1] ?? '') ?? [];
          const row = [...key.querySelectorAll('tbody tr')][at] as Element;
          const [answer, ...slips] = texts(row, 'td');
          const because = texts(key, '.key-steps li')[at]?.replace(`${seed} `, '');
          return [seed, ask, answer, unit, because, ...slips].join('\n');
        });
      })
      .join('\n');
  });

test('a link gives the same sheets and key here as on every machine', async ({ page }) => {
  for (const units of ['metric', 'us'] as const) {
    await page.goto('about:blank');
    await openLive(
      page,
      `./teach/sheets/#v=1&seed=${GOLDEN.seed}&lessons=${EVERY_LESSON}&questions=12&variants=${GOLDEN.sheets}&units=${units}`,
    );
    await expect(page.locator('.problem-sheet')).toHaveCount(GOLDEN.sheets);
    expect(digestOf(await wholeText(page)), units).toBe(GOLDEN.twelve[units]);
  }
});

test('sheets are chosen by keyboard alone, refused where they cannot be, and kept in the address', async ({
  page,
}) => {
  await openLive(page, './teach/sheets/#v=1&seed=7&variants=99&lessons=stiff-spring,<b>&units=us');
  await expect(page.getByText(/Part of the link could not be used/)).toContainText('variants=99');
  const sheets = page.getByLabel('Sheets, each with other numbers');
  await sheets.focus();
  await sheets.fill('90');
  await expect(
    page.getByText('“90” does not fit. Type a whole number from 1 to 40.'),
  ).toBeVisible();
  await expect(page.getByRole('button', { name: 'Print' })).toBeDisabled();
  await sheets.fill('3');
  await expect(page.locator('.problem-sheet h2')).toHaveText([
    'Problem sheet 7',
    'Problem sheet 8',
    'Problem sheet 9',
  ]);
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page.locator('.problem-sheet h2').first()).not.toHaveText('Problem sheet 7');
  expect(page.url()).toContain('&variants=3&units=us');
  await page.getByLabel('key alone').check();
  await expect(page.locator('.problem-sheet')).toHaveCount(0);
  await expect(page.locator('.answer-key')).toBeVisible();
});

test('sheets fetch the models of the lessons only once others than the first are asked for', async ({
  page,
}) => {
  const models = () =>
    page.evaluate(() =>
      performance.getEntriesByType('resource').filter(({ name }) => /\/model\./.test(name)),
    );
  await openLive(page, './teach/sheets/');
  expect(await models()).toEqual([]);
  await page.getByLabel('Sheets, each with other numbers').fill('3');
  await expect(page.locator('.problem-sheet')).toHaveCount(3);
  expect(await models()).not.toEqual([]);
});

test('the first sheet is there without script, in both unit systems', async ({ browser }) => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto('./teach/sheets/');
  await expect(page.locator('.problem-sheet').filter({ visible: true })).toHaveCount(1);
  await expect(page.locator('.problem-sheet').filter({ visible: true })).toContainText('N·m');
  await page.locator('#units-us').check();
  await expect(page.locator('.problem-sheet').filter({ visible: true })).toContainText('ft·lbf');
  await expect(page.locator('.sheet-controls')).toBeHidden();
  await context.close();
});

test('on paper there are sheets, then the key, and nothing of the site', async ({ page }) => {
  await openLive(page, './teach/sheets/#v=1&variants=2&units=metric');
  await expect(page.locator('.problem-sheet')).toHaveCount(2);
  await page.emulateMedia({ media: 'print' });
  for (const hidden of ['.site-head', '.site-foot', '.sheet-controls'])
    await expect(page.locator(hidden)).toBeHidden();
  const first = (selector: string) => page.locator(selector).first();
  await expect(first('.problem-sheet')).toHaveCSS('break-after', 'page');
  await expect(first('.answer-key')).toHaveCSS('break-before', 'page');
});

test('two pasted columns give the gain of a class, and nonsense is told beside its box', async ({
  page,
}) => {
  await openLive(page, './teach/before-and-after/');
  const first = page.getByLabel('Learner 1, before');
  await first.focus();
  await first.evaluate((box) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text', '2\t6\n4\t6\n3\t7');
    box.dispatchEvent(
      new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }),
    );
  });
  await expect(page.getByLabel('Learner 3, after')).toHaveValue('7');
  await expect(page.locator('.gain-finding')).toHaveText(/^Your class gained 0\.476\s±\s0\.064/);
  await page.getByLabel('Learner 4, before').fill('12');
  await expect(page.locator('#score-3-before-trouble')).toContainText('“12” does not fit');
  await expect(page.locator('.gain-finding')).toHaveText(/^Your class gained 0\.476/);
});

test('a link carries its units to this page alone, and what is no unit changes nothing', async ({
  page,
}) => {
  const seen = (unit: string) =>
    expect(page.locator('.tasks').filter({ visible: true })).toContainText(unit);
  await openLive(page, './teach/hand-outs/stiff-spring/#units=us');
  await expect(page.locator('#units-us')).toBeChecked();
  await seen('psi');
  expect(await page.evaluate(() => localStorage.getItem('units'))).toBeNull();
  await page.goto('about:blank');
  await openLive(page, './teach/hand-outs/stiff-spring/#units=<script>');
  await expect(page.locator('#units-metric')).toBeChecked();
  await seen('MPa');
  await openLive(page, './lessons/stiff-spring/');
  await expect(page.locator('#units-metric')).toBeChecked();
});

test('the number of learners goes along to sheets and scores', async ({ page }) => {
  await openLive(page, './teach/');
  await page.getByLabel('How many learners?').fill('99');
  await expect(page.locator('#learners-trouble')).toContainText('from 1 to 40');
  await page.getByLabel('How many learners?').fill('7');
  const sheets = page.getByRole('link', { name: 'problem sheets for 7 learners' });
  await expect(sheets).toHaveAttribute('href', /variants=7$/);
  await page.getByRole('link', { name: 'the ten questions' }).click();
  await page.waitForSelector('html[data-live="ready"]');
  await expect(page.locator('.scores tbody tr')).toHaveCount(7);
});

test('the number of learners goes along to a plan of 45 minutes and its problem sheets', async ({
  page,
}) => {
  await openLive(page, './teach/');
  await page.getByLabel('How many learners?').fill('9');
  await page.getByRole('link', { name: /^Plan 2/ }).click();
  await expect(page).toHaveURL(/plans\/read-the-stretch\/#learners=9$/);
  await page
    .getByRole('link', { name: 'Problem sheets for these lessons, for 9 learners' })
    .click();
  await expect(page.getByLabel('Sheets, each with other numbers')).toHaveValue('9');
});

test('the rig is drawn legibly on a phone, and nothing leaves its sheet', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 800 });
  await openLive(page, './teach/rig/');
  const found = await page.evaluate(() =>
    [...document.querySelectorAll<SVGTextElement>('.rig svg text')]
      .filter((text) => text.getClientRects().length > 0)
      .map((text) => {
        const sheet = text.ownerSVGElement as SVGSVGElement;
        const [own, around] = [text.getBoundingClientRect(), sheet.getBoundingClientRect()];
        const scale = around.width / sheet.viewBox.baseVal.width;
        return {
          words: text.textContent,
          size: scale * Number.parseFloat(getComputedStyle(text).fontSize),
          beyond: Math.max(around.left - own.left, own.right - around.right, around.top - own.top),
        };
      }),
  );
  expect(found.length).toBeGreaterThan(12);
  expect(found.filter(({ size }) => size < 12)).toEqual([]);
  expect(found.filter(({ beyond }) => beyond > 1)).toEqual([]);
});

for (const address of [
  './teach/sheets/',
  './teach/',
  './teach/rig/',
  './teach/before-and-after/',
  './teach/hand-outs/stiff-spring/',
]) {
  testAlone(`${address} starts with at most ${SCRIPT} bytes of script`, async ({ page }) => {
    const { script } = await arrivals(page, () => openLive(page, address));
    expect(script).toBeGreaterThan(5_000);
    expect(script).toBeLessThanOrEqual(SCRIPT);
  });
}
