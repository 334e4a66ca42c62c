import type { Page } from '@playwright/test';

const ALIVE = '[data-model], [data-worksheet], [data-bench], [data-teaching], [data-search]'; // what a page has that comes alive by script

/** Waits until the page answers; a page that only reads answers as soon as it is there. */
export async function waitUntilLive(page: Page): Promise<void> {
  if ((await page.locator(ALIVE).count()) > 0)
    await page.waitForSelector('html[data-live="ready"]');
}

/** Opens a page whole, its script started. */
export async function openLive(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await waitUntilLive(page);
}

/** Makes it a browser that keeps no site: ours has its worker refused, and would answer amiss when asked for it. */
export const keepNoSite = (page: Page): Promise<unknown> =>
  page.addInitScript(() => Object.defineProperty(navigator, 'serviceWorker', { value: undefined }));
