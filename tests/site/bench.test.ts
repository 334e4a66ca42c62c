/** The practice bench as a learner and a class use it: by keyboard alone, by link, over a reload, on to the worksheet. */
import { expect, type Page, test as testAlone } from '@playwright/test';
import { benchLooks, benchMillAt, type Handling } from '../../src/core/bench.ts';
import { bundledGolden } from '../practice/bundled-golden.ts';
import { goldenLooks } from '../practice/golden-looks.ts';
import { test } from './kept-page.ts';
import { openLive } from './open-live.ts';

const QUICK: Handling = { clamps: 'quick', hands: 'bare' };
const TORQUES = [3, 4, 6, 8, 10, 12, 14, 16, 18];
const MILL = benchMillAt(7, 'clean');
const MM = 1e3;

/** What the dial of mill 7 shows at each of the torques, mm. */
const shown = (): readonly string[] => {
  const { looks } = benchLooks(MILL, { ...QUICK, attempt: 0, torques: TORQUES });
  return looks.slice(1).map(({ position }) => (position * MILL.known.dialStep * MM).toFixed(3));
};

const openBench = (page: Page, fragment = '#v=1&seed=7&level=clean') =>
  openLive(page, `bench/${fragment}`);

/** Tabs on until the control of that name has the focus. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let step = 0; step < 60; step += 1) {
    await page.keyboard.press('Tab');
    const here = await page.evaluate(() => {
      const focused = document.activeElement;
      const label = focused instanceof HTMLInputElement ? focused.labels?.[0]?.textContent : '';
      return `${focused?.getAttribute('aria-label') ?? ''} ${label ?? ''} ${focused?.textContent ?? ''}`;
    });
    if (name.test(here)) return;
  }
  throw new Error(`no stop is called ${name}`);
}

/** Goes back to the beginning of the bench. */
const toTop = (page: Page) =>
  page.evaluate(() => document.querySelector<HTMLElement>('#units-metric')?.focus());

const hands = (page: Page) => page.locator('#bench-description');

/** Takes a series with the mouse. */
async function takeSeries(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^Clamp for/ }).click();
  for (const [at, dial] of shown().entries()) {
    await page.locator('#bench-wrench').fill(String(TORQUES[at]));
    await page.getByRole('button', { name: 'Turn until it clicks' }).click();
    await page.locator('#bench-reading').fill(dial);
    await page.getByRole('button', { name: 'Write it down' }).click();
  }
}

test('is done by keyboard alone, from the clamps to the lid', async ({ page }) => {
  await openBench(page);
  await toTop(page);
  await tabTo(page, /^ *with care|in a hurry/);
  await tabTo(page, /Clamp for series 1/);
  await page.keyboard.press('Enter');
  for (const [at, dial] of shown().entries()) {
    await toTop(page);
    await tabTo(page, /Set the wrench to/);
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type(String(TORQUES[at]));
    await page.keyboard.press('Enter');
    await tabTo(page, /The dial reads/);
    await page.keyboard.type(dial);
    await page.keyboard.press('Enter');
  }
  await expect(page.locator('.bench-rows tbody td:nth-child(2)')).toHaveCount(TORQUES.length);
  await tabTo(page, /Let the band off/);
  await page.keyboard.press('Enter');
  await tabTo(page, /Stress in the band at 18\.0/);
  await page.keyboard.type('112');
  await tabTo(page, /Lift the lid/);
  await page.keyboard.press('Enter');
  await expect(page.locator('.lid-verdict')).toContainText(
    'At 18.0 N·m the band really feels 112 MPa',
  );
});

test('says where the hands are, and never what they read', async ({ page }) => {
  await openBench(page);
  await page.getByRole('button', { name: /^Clamp for/ }).click();
  await expect(hands(page)).toContainText(/The big hand is .* clockwise of|exactly on/);
  await page.locator('#bench-wrench').fill('12');
  await page.locator('#bench-wrench').press('Enter');
  const { looks } = benchLooks(MILL, { ...QUICK, attempt: 0, torques: [12] });
  const reading = ((looks[1]?.position as number) * MILL.known.dialStep * MM).toFixed(3);
  const html = await page.locator('.bench').innerHTML();
  for (const digits of [reading, reading.slice(0, -1)]) expect(html).not.toContain(digits);
  await page.locator('.hands-words summary').click();
  await expect(page.locator('#bench-hands')).toContainText('the small hand');
});

test('gives everyone with the same link the same mill and the same readings', async ({
  browser,
  baseURL,
}) => {
  const seen: string[] = [];
  for (const locale of ['en-GB', 'en-US', 'de-DE']) {
    const context = await browser.newContext({ locale, ...(baseURL && { baseURL }) });
    const page = await context.newPage();
    await openBench(page, '#v=1&seed=1234&level=slipping');
    await page.locator('#units-metric').check();
    await page.getByRole('button', { name: /^Clamp for/ }).click();
    for (const torque of ['5', '9', '12']) {
      await page.locator('#bench-wrench').fill(torque);
      await page.locator('#bench-wrench').press('Enter');
    }
    seen.push(
      `${await page.locator('.bench-name').textContent()} ${await hands(page).textContent()}`,
    );
    await context.close();
  }
  expect(seen[0]).toContain('Mill 1234: slipping clamp');
  expect(new Set(seen).size).toBe(1);
});

test('opens the lid for a teacher’s link, and says so', async ({ page }) => {
  await openBench(page, '#v=1&seed=7&level=clean&lid=open');
  await expect(page.locator('.bench-teacher')).toContainText('the lid is open');
  await expect(page.locator('.lid-hidden')).toContainText('No-load torque');
  await openBench(page, '#v=1&seed=7&level=clean');
  await expect(page.locator('.bench-teacher')).toHaveCount(0);
  await expect(page.locator('.lid-open')).toHaveCount(0);
});

test('tells what of a broken link could not be used, and puts the first mill on the bench', async ({
  page,
}) => {
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await openBench(page, '#v=1&seed=%3Cimg%20src%3Dx%3E&level=__proto__&lid=ajar');
  await expect(page.locator('.bench-notice')).toContainText(
    'seed=<img src=x>, level=__proto__, lid=ajar',
  );
  await expect(page.locator('.bench-name')).toContainText('Mill 1: clean');
  await page.evaluate(() => {
    location.hash = '#v=1&seed=44&level=toe';
  });
  await expect(page.locator('.bench-name')).toContainText('Mill 44: long straightening');
  await expect(page.locator('.bench-notice')).toHaveCount(0);
  expect(errors).toEqual([]);
});

test('loses nothing over a reload, and keeps each mill’s work apart', async ({ page }) => {
  await openBench(page);
  await takeSeries(page);
  await page.locator('#bench-answer').fill('16000 psi');
  const before = await page.locator('.bench-table').textContent();
  await page.reload();
  await expect(page.locator('.bench-rows tbody td:nth-child(2)')).toHaveCount(TORQUES.length);
  expect(await page.locator('.bench-table').textContent()).toBe(before);
  await expect(page.locator('#bench-answer')).toHaveValue('16000 psi');
  await page.locator('[name="seed"]').fill('8');
  await page.getByRole('button', { name: 'Open this mill' }).click();
  await expect(page.locator('.bench-rows')).toHaveCount(0);
  await page.goBack().catch(() => undefined);
  await openBench(page);
  await expect(page.locator('.bench-rows tbody td:nth-child(2)')).toHaveCount(TORQUES.length);
});

testAlone('tells where the browser keeps nothing', async ({ page }) => {
  await page.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new Error('full');
    };
  });
  await openBench(page);
  await page.getByRole('button', { name: /^Clamp for/ }).click();
  await expect(page.locator('.bench-notice')).toContainText('keeps nothing');
});

test('says beside the box what is wrong, and keeps what was typed', async ({ page }) => {
  await openBench(page);
  await page.getByRole('button', { name: /^Clamp for/ }).click();
  for (const [typed, says] of [
    ['', 'empty'],
    ['abc', 'torque'],
    ['-3', 'more than 0'],
    ['500', 'allows'],
    ['12 mm', 'torque'],
  ]) {
    await page.locator('#bench-wrench').fill(typed as string);
    await page.locator('#bench-wrench').press('Enter');
    await expect(page.locator('#bench-wrench-trouble')).toContainText(says as string);
    await expect(page.locator('#bench-wrench')).toHaveValue(typed as string);
  }
  for (const [typed, says] of [
    ['six', 'number'],
    ['97.5 in', 'shows 0'],
  ]) {
    await page.locator('#bench-reading').fill(typed as string);
    await page.locator('#bench-reading').press('Enter');
    await expect(page.locator('#bench-reading-trouble')).toContainText(says as string);
    await expect(page.locator('#bench-reading')).toHaveValue(typed as string);
  }
  await expect(page.locator('.bench-rows')).toHaveCount(0);
});

test('opens its readings on the worksheet, where they give the stress', async ({ page }) => {
  await openBench(page);
  await takeSeries(page);
  await page.getByRole('button', { name: 'Open these readings on the worksheet' }).click();
  await page.waitForURL(/worksheet/);
  await page.waitForSelector('html[data-live="ready"]');
  await expect(page.locator('[data-path="label"]')).toHaveValue('Practice mill 7, clean');
  for (const [at, dial] of shown().entries()) {
    await expect(page.locator(`[data-path="readings.${at}.torque"]`)).toHaveValue(
      String(TORQUES[at]),
    );
    await expect(page.locator(`[data-path="readings.${at}.dial"]`)).toHaveValue(dial);
  }
  await expect(page.locator('[data-worksheet="answers"]')).toContainText('You measured');
});

test('shows in this browser what it shows under Node', async ({ page }) => {
  await page.goto('./');
  const script = await bundledGolden();
  const lines = await page.evaluate(`${script}; golden.goldenLooks()`);
  expect(lines).toEqual(goldenLooks());
});
