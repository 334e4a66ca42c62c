/** Visits to a host of two editions: what a page loads of each, and what the line at its foot says of them. */
import { type BrowserContext, expect, type Page } from '@playwright/test';
import { waitUntilLive } from './open-live.ts';
import { isNewer, isOfAnEdition } from './two-editions.ts';

/** How long a whole edition may take. */
export const PATIENCE = 40_000; // ms: up to two hundred files come one after the other

/** A line at the foot, by its name. */
export const line = (page: Page, name: string) => page.locator(`[data-yard="${name}"] span`);
/** Waits until all of it is kept. */
export async function stored(page: Page): Promise<void> {
  await page.locator('.site-foot').scrollIntoViewIfNeeded();
  await expect(line(page, 'stored')).toContainText('The whole notebook', { timeout: PATIENCE });
}

/** Waits until the newer version is offered, which is once all of it has come. */
export const isOffered = (page: Page) =>
  expect(line(page, 'version')).toContainText('newer version', { timeout: PATIENCE });

/** Opens a page and gives the addresses of all that it loads, from its last navigation on. */
export async function visitPage(context: BrowserContext, address: string) {
  const page = await context.newPage();
  const loaded: string[] = [];
  const faults: string[] = [];
  page.on('pageerror', ({ message }) => faults.push(message));
  page.on('request', (request) => {
    if (request.isNavigationRequest()) loaded.length = 0;
    loaded.push(request.url());
  });
  await page.goto(address);
  await waitUntilLive(page);
  await page.locator('.site-foot').scrollIntoViewIfNeeded();
  const editionsOf = () => [...new Set(loaded.filter(isOfAnEdition).map(isNewer))];
  return { page, loaded, editionsOf, faults };
}

/** Asks the browser to look for a newer worker now, as it does by itself with every visit. */
export const lookForUpdate = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration?.update().catch(() => undefined);
  });
