/**
 * What holds on every page, whatever it teaches, in one visit: it is quiet, asks nobody else, fits a narrow screen,
 * goes to paper, bars nobody as far as a machine can tell, and is reached whole by keyboard.
 */
import { expect, type Page } from '@playwright/test';
import { barriers, barriersOfLooks, WCAG } from './barriers.ts';
import { test } from './kept-page.ts';
import { lostByKeyboard } from './keyboard-walk.ts';
import { openLive } from './open-live.ts';
import { PAGES } from './pages.ts';

/** Gathers what goes wrong on a page from now on: console errors, thrown errors, requests to other hosts. */
function watchedFaults(page: Page): readonly string[] {
  const faults: string[] = [];
  page.on('console', (message) => message.type() === 'error' && faults.push(message.text()));
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('request', (request) => {
    const { protocol, hostname } = new URL(request.url());
    if (/^https?:/.test(protocol) && hostname !== '127.0.0.1') faults.push(request.url());
  });
  return faults;
}

const sideways = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

async function fitsNarrowScreens(page: Page) {
  const { width: wide, height } = page.viewportSize() ?? { width: 1280, height: 720 };
  for (const width of [320, 390]) {
    await page.setViewportSize({ width, height: 700 });
    expect(await sideways(page), `at ${width} px`).toBeLessThanOrEqual(0);
  }
  await page.setViewportSize({ width: wide, height });
}

async function goesToPaper(page: Page) {
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.site-head nav')).toBeHidden();
  await expect(page.locator('.units')).toBeHidden();
  await expect(page.locator('h1')).toBeVisible();
  await page.emulateMedia({ media: 'screen' });
}

/** By day in metric units; how it looks also by night in US units. */
async function barsNobody(page: Page) {
  expect(await page.locator('iframe').count(), 'frames').toBe(0);
  expect(await barriers(page, [...WCAG, 'best-practice']), 'by day').toEqual([]);
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.locator('#units-us').check();
  expect(await barriersOfLooks(page), 'by night').toEqual([]);
}

for (const address of PAGES) {
  test(`${address} is quiet, fits, goes to paper, and bars nobody`, async ({ page }) => {
    await page.emulateMedia({ reducedMotion: 'reduce', colorScheme: 'light' });
    const faults = watchedFaults(page);
    await openLive(page, address);
    await expect(page.locator('h1')).toBeVisible();
    await test.step('is reached whole by keyboard', async () =>
      expect(await lostByKeyboard(page)).toEqual([]));
    await test.step('fits a narrow screen', () => fitsNarrowScreens(page));
    await test.step('goes to paper', () => goesToPaper(page));
    await test.step('bars nobody, as far as a machine can tell', () => barsNobody(page));
    expect(faults).toEqual([]);
  });
}
