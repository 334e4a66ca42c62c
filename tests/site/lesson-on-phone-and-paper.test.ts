/**
 * What a lesson asks of a reader on a phone: what it really fetches before anything is done, modules that start other
 * modules too, its words, its screens, and a guess at once; every equation with its result;
 * and what has the focus is never under the drawing that stays in view. On paper: no words of the screen, folds written
 * out, the answers after everything else.
 */
import { expect, type Page, test } from '@playwright/test';
import { arrivals, expectLight } from './arrivals.ts';
import { openLive } from './open-live.ts';
import { LESSONS } from './pages.ts';
import { visibleWords } from './visible-words.ts';

const OF_THE_SCREEN = /^(drag|tap|slider|button|scroll)[.,:;]?$/i;
const SCREEN = { width: 1280, height: 720 };
const PHONE = { width: 390, height: 844 };
const SCRIPT = 30_000; // bytes, gzip
const MOST_WORDS = 900;
const MOST_SCREENS = 8;

/** The equations that a reader would have to push sideways to see their result. */
const tooWide = (page: Page) =>
  page
    .locator('.equation')
    .evaluateAll((all) =>
      all
        .filter(({ scrollWidth, clientWidth }) => scrollWidth > clientWidth + 1)
        .map(({ textContent }) => textContent),
    );

/** How far the control in focus stands clear of the drawing that stays in view above it, px; undefined past the controls. */
const clearance = (page: Page) =>
  page.evaluate(() => {
    const control = document.activeElement?.closest('.play-controls') && document.activeElement;
    const drawing = control?.closest('live-figure')?.querySelector('.play-drawing');
    if (!control || !drawing) return undefined;
    return control.getBoundingClientRect().top - drawing.getBoundingClientRect().bottom;
  });

async function fits(page: Page, system: string) {
  await page.locator(`#units-${system}`).check({ force: true });
  const guess = page.locator('guess-first');
  await expect(guess.locator('.slider')).toBeInViewport({ ratio: 1 });
  await expect(guess.getByRole('button')).toBeInViewport({ ratio: 1 });
  const words = (await visibleWords(page)).length;
  expect(words, system).toBeGreaterThan(300);
  expect(words, system).toBeLessThanOrEqual(MOST_WORDS);
  const screens = await page.evaluate(() => document.documentElement.scrollHeight / innerHeight);
  expect(screens, system).toBeLessThanOrEqual(MOST_SCREENS);
  expect(await tooWide(page), system).toEqual([]);
}

async function keepsFocusClear(page: Page) {
  await page.locator('.play-controls :is(input, button)').first().focus();
  const clear: number[] = [];
  for (let here = await clearance(page); here !== undefined; here = await clearance(page)) {
    clear.push(here);
    await page.keyboard.press('Tab');
  }
  expect(clear.length).toBeGreaterThan(2);
  expect(Math.min(...clear)).toBeGreaterThanOrEqual(0);
}

async function isAnExerciseSheet(page: Page) {
  const [check] = await page.locator('check-yourself').all();
  if (!check) throw new Error('a lesson has questions');
  await check.getByRole('button', { name: 'Other numbers' }).click();
  const because = check.locator('[data-part="because"]');
  const answers = page.locator('.answers');
  await expect(answers).toBeHidden();

  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.play-controls').first()).toBeHidden();
  await expect(page.locator('.site-head nav')).toBeHidden();
  for (const fold of await page.locator('article details').all())
    await expect(fold.locator(':scope > :not(summary)').first()).toBeVisible({
      visible: !(await fold.evaluate((element) => Boolean(element.closest('.guess, .check')))),
    });
  await expect(answers).toBeVisible();
  expect(await answers.evaluate((section) => section.nextElementSibling)).toBeNull();
  await expect(answers.locator('li').first()).toHaveText((await because.textContent()) ?? '');
  const words = await visibleWords(page);
  expect(words.filter((word) => OF_THE_SCREEN.test(word))).toEqual([]);
}

test('there are lessons to try', () => expect(LESSONS.length).toBeGreaterThan(5));

for (const address of LESSONS) {
  test(`${address} starts with at most ${SCRIPT} bytes of script, fits a phone, begins with a guess, and is on paper an exercise sheet with its answers last`, async ({
    page,
  }) => {
    await page.setViewportSize(PHONE);
    const arrived = await arrivals(page, () => openLive(page, address));
    await test.step('starts light', () => expectLight(arrived, SCRIPT));
    for (const system of ['us', 'metric']) await test.step(system, () => fits(page, system));
    await test.step('keeps what has the focus clear', () => keepsFocusClear(page));
    await page.setViewportSize(SCREEN);
    await test.step('is on paper an exercise sheet', () => isAnExerciseSheet(page));
  });
}
