import { existsSync, readdirSync } from 'node:fs';
import { type Browser, expect, type Locator, type Page } from '@playwright/test';
import { kindOf, type Model } from '../../src/models/define-model.ts';
import { drawProblem, type ProblemTemplate } from '../../src/models/problem.ts';
import { formatInput, formatQuantity } from '../../src/units/format-quantity.ts';
import { test } from './kept-page.ts';

/** What every lesson owes, tried on each lesson's built page. */

const folder = new URL('../../content/lessons/', import.meta.url);
const lessons = readdirSync(folder).map((file) => file.replace('.mdx', ''));
const BEATS = [
  'At the mill',
  'Guess first',
  'Play',
  'In numbers',
  'Work one through',
  'Check yourself',
  'Back at the mill',
];

const figureOf = (page: Page) => page.locator('live-figure').first();
const findingOf = (page: Page) => figureOf(page).locator('.finding').filter({ visible: true });

/** Opens a lesson and waits until its first figure is drawn by the browser. */
async function open(page: Page, slug: string, fragment = '') {
  await page.goto(`./lessons/${slug}/${fragment}`);
  await figureOf(page).scrollIntoViewIfNeeded();
  await expect(figureOf(page)).toHaveAttribute('data-said', /./);
}

/** The question that a check shows first, drawn again here from its template. */
async function drawn(check: Locator) {
  const template = JSON.parse((await check.getAttribute('data-template')) ?? '') as ProblemTemplate;
  const name = (await check.page().locator('[data-model]').getAttribute('data-model')) ?? '';
  const module: Record<string, unknown> = await import(`../../src/lessons/${name}/model.ts`);
  const model = Object.values(module).find((one): one is Model => (one as Model)?.name === name);
  if (!model) throw new Error(`no model ${name}`);
  const problem = drawProblem(template, model, Number(await check.getAttribute('data-seed')));
  return { problem, kind: kindOf(model, template.answer) };
}

/** The first slider that has a box as its twin, inside the first figure. */
const firstTwins = (page: Page) => figureOf(page).locator('.twins').first();

/** The drawing that is shown. */
const drawingOf = (page: Page) => figureOf(page).locator('.body').filter({ visible: true });

/** The quantities whose letters stand in equations, and those that are named: under one, or by the text as a letter. */
const letters = (page: Page) =>
  page.evaluate(() => {
    const names = (selector: string, isMeant = (_: Element) => true) =>
      [...document.querySelectorAll(selector)]
        .filter(isMeant)
        .map((element) => element.getAttribute('data-sym'));
    const isLetter = ({ textContent }: Element) => (textContent ?? '').length <= 3;
    return {
      used: [...new Set(names('.equation .katex-html [data-sym]:not(:has(.value))'))],
      under: names('.letters > [data-sym]'),
      inText: names('.prose .symbol', isLetter),
    };
  });

/** Without script: complete, in the beats of the rhythm, every letter of its equations named, none twice. */
async function readsComplete(still: Page) {
  const headings = await still.locator('.prose > h2').allTextContents();
  const places = BEATS.map((beat) => headings.indexOf(beat));
  expect(places).not.toContain(-1);
  expect(places).toEqual([...places].sort((a, b) => a - b));
  await expect(findingOf(still)).toHaveText(/\d/);
  await expect(still.locator('check-yourself details').first()).toBeVisible();
  expect(await still.locator('check-yourself').count()).toBeGreaterThanOrEqual(2);
  await expect(still.locator('.caution')).toHaveCount(1);
  await expect(still.locator('.needs-script:visible')).toHaveCount(0);
  expect(await still.locator('main').textContent()).not.toMatch(/NaN|undefined|LIVE/);
  const { used, under, inText } = await letters(still);
  expect(used.length).toBeGreaterThan(3);
  expect(used.filter((name) => ![...under, ...inText].includes(name))).toEqual([]);
  expect(new Set([...under, ...inText]).size).toBe(under.length + new Set(inText).size);
  await still.locator('#units-us').check({ force: true });
  await expect(still.locator('.body.variant-wide.q-us').first()).toBeVisible();
  await expect(still.locator('.body.variant-wide.q-metric').first()).toBeHidden();
}

/** The page as built reads complete, and the browser draws the same, to the letter. */
async function drawsAsBuilt(page: Page, browser: Browser) {
  const still = await browser.newPage({ javaScriptEnabled: false });
  await still.goto(page.url());
  const part = '.body.variant-wide.q-metric';
  const built = await figureOf(still).locator(part).innerHTML();
  await expect(figureOf(page).locator(part)).toBeVisible();
  expect(await figureOf(page).locator(part).innerHTML()).toBe(built);
  await test.step('reads complete without script', () => readsComplete(still));
  await still.close();
}

/** The slider's keys change drawing and box, and the figure is spoken of once at rest. */
async function answersToKeys(page: Page) {
  const drawing = drawingOf(page).locator('svg');
  const before = await drawing.innerHTML();
  const slider = firstTwins(page).locator('input[type="range"]');
  await slider.focus();
  await slider.press('PageUp');
  await slider.press('PageUp');
  await expect(async () => expect(await drawing.innerHTML()).not.toBe(before)).toPass();
  expect(await firstTwins(page).locator('input[type="text"]').inputValue()).not.toBe('');
  await expect(figureOf(page).locator('[role="status"]')).toHaveText(/\S/);
}

async function changesNumbers(page: Page) {
  const numbers = page.locator('.prose live-value, .prose live-equation mtext.q-metric');
  const before = await numbers.allTextContents();
  await firstTwins(page).locator('input[type="range"]').press('Home');
  await expect(async () => expect(await numbers.allTextContents()).not.toEqual(before)).toPass();
  expect((await numbers.allTextContents()).join(' ')).not.toMatch(/NaN|undefined/);
}

/** Whoever opens the address, with nothing kept from before, draws the same state once it is written there. */
async function isItsOwnLink(page: Page) {
  const before = page.url();
  await firstTwins(page).locator('input[type="range"]').press('PageUp');
  await expect(page).toHaveURL(/#v=1&/);
  await expect(page).not.toHaveURL(before);
  const sent = await drawingOf(page).textContent();
  await page.evaluate(() => localStorage.clear());
  const fresh = await page.context().newPage();
  await expect(async () => {
    await fresh.goto('about:blank');
    await fresh.goto(page.url()); // it may still have been that of the move before
    await figureOf(fresh).scrollIntoViewIfNeeded();
    await expect.poll(() => drawingOf(fresh).textContent(), { timeout: 5_000 }).toBe(sent);
  }).toPass();
  await fresh.close();
}

for (const slug of lessons) {
  test.describe(`the lesson ${slug}`, () => {
    test('draws at once what it drew at build, answers to hand and keys, and is its own link', async ({
      page,
      browser,
    }) => {
      await open(page, slug);
      await test.step('draws what it drew at build', () => drawsAsBuilt(page, browser));
      await test.step('answers to box, slider and keys', () => answersToKeys(page));
      await test.step('changes the numbers in text and equation', () => changesNumbers(page));
      await test.step('is its own link', () => isItsOwnLink(page));
    });
  });
}

/** What every lesson has from the same parts, which their own tests try on all they meet: on one page it is enough. */
test.describe('a lesson', () => {
  const [first = ''] = lessons;

  test('keeps what was typed and says what is wrong beside the box', async ({ page }) => {
    await open(page, first);
    const finding = await findingOf(page).textContent();
    const box = firstTwins(page).locator('input[type="text"]');
    await box.fill('twelve');
    await expect(firstTwins(page).locator('.refusal')).toBeVisible();
    await expect(box).toHaveValue('twelve');
    await expect(box).toHaveAttribute('aria-invalid', 'true');
    expect(await findingOf(page).textContent()).toBe(finding);
  });

  test('tells what of a hostile link it could not use, and goes on', async ({ page }) => {
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(error.message));
    await open(page, first, '#v=1&constructor=1&%00=<script>&nothing');
    await expect(page.locator('[data-link-refused]')).toBeVisible();
    expect(errors).toEqual([]);
  });

  test('takes a right answer as right, in the other unit too, and names the slips', async ({
    page,
  }) => {
    await open(page, first);
    for (const check of await page.locator('check-yourself').all()) {
      const { problem, kind } = await drawn(check);
      const reply = check.locator('[data-part="reply"]');
      const answer = async (text: string) => {
        await check.locator('input').fill(text);
        await check.locator('button[type="submit"]').click();
      };
      await answer(formatInput(problem.answer, kind, 'metric'));
      await expect(reply).toHaveText(/^Yes\./);
      await answer('nothing');
      await expect(reply).not.toHaveText(/^Yes\.|^$/);
      await expect(check.locator('input')).toHaveValue('nothing');
      await answer(formatQuantity(problem.answer, kind, 'us', { digits: 4 }));
      await expect(reply).toHaveText(/^Yes\./);
      for (const slip of problem.slips.slice(0, 2)) {
        await answer(formatQuantity(slip.answer, kind, 'metric', { digits: 4 }));
        await expect(reply).toHaveText(slip.says);
      }
    }
  });
});

test('every lesson is tried', () => {
  expect(lessons.length).toBeGreaterThan(0);
  for (const slug of lessons) {
    expect(existsSync(new URL(`../../src/lessons/${slug}/model.ts`, import.meta.url))).toBe(true);
  }
});
