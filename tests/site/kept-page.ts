/**
 * The test of whatever needs no browser of its own: the tests of a worker share one page, emptied after each.
 * A visit to a site that the page is already at costs a third of one in a process of its own.
 * What sets a locale, forbids script, runs a script before the page's own or counts what a first visit loads
 * takes `test` from Playwright instead.
 */
import { type BrowserContext, test as base, type Page } from '@playwright/test';
import { keepNoSite } from './open-live.ts';

const AT_REST = 'robots.txt'; // of the same site, without a script

interface Kept {
  readonly context: BrowserContext;
  readonly page: Page;
}

/** Takes back whatever a test did to the page and to what the browser keeps of the site. */
async function emptyAll({ context, page }: Kept): Promise<void> {
  for (const other of context.pages()) if (other !== page) await other.close();
  page.removeAllListeners();
  await page.unrouteAll();
  await page.goto(AT_REST);
  await page.evaluate(async () => {
    localStorage.clear();
    sessionStorage.clear();
    for (const { name } of await indexedDB.databases())
      await new Promise((done) => {
        if (name) indexedDB.deleteDatabase(name).onsuccess = done;
      });
  });
  await page.mouse.move(-1, -1);
  await page.emulateMedia({
    media: null,
    colorScheme: null,
    reducedMotion: null,
    forcedColors: null,
    contrast: null,
  });
  await context.clearPermissions();
}

export const test = base.extend<object, { kept: Kept }>({
  kept: [
    async ({ browser }, use, { project }) => {
      const { baseURL, locale, serviceWorkers } = project.use;
      const context = await browser.newContext({
        ...(baseURL && { baseURL }),
        ...(locale && { locale }),
        ...(serviceWorkers && { serviceWorkers }),
      });
      const page = await context.newPage();
      await keepNoSite(page);
      await use({ context, page });
      await context.close();
    },
    { scope: 'worker' },
  ],
  context: ({ kept }, use) => use(kept.context),
  page: async ({ kept, viewport, permissions }, use) => {
    if (viewport) await kept.page.setViewportSize(viewport);
    if (permissions) await kept.context.grantPermissions(permissions);
    await use(kept.page);
    await emptyAll(kept);
  },
});
