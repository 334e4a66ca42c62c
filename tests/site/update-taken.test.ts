/** A newer version that the reader takes by its button, whatever the pages ask for meanwhile and other tabs have done. */
import { type BrowserContext, expect, test } from '@playwright/test';
import { isNewer, serveEditions } from './two-editions.ts';
import { isOffered, lookForUpdate, PATIENCE, stored, visitPage } from './visits.ts';

test.use({ serviceWorkers: 'allow', reuseContext: false });

let editions: Awaited<ReturnType<typeof serveEditions<'/'>>>;
test.beforeEach(async () => {
  editions = await serveEditions({ '/': 'dist' });
});
test.afterEach(() => editions.close());

test.describe.configure({ timeout: 150_000 });

const visit = (context: BrowserContext, path: string) => visitPage(context, editions.origin + path);

test('the new version takes over though the press on it brings late parts', async ({ context }) => {
  const { page, loaded } = await visit(context, '/');
  await stored(page);
  editions.hosts['/'].edition = 'newer';
  await lookForUpdate(page);
  await isOffered(page);
  await page.evaluate(() =>
    addEventListener('pointerdown', () => {
      const asking = setInterval(() => fetch('app.webmanifest').catch(() => undefined), 20); // ms
      setTimeout(() => clearInterval(asking), 1000); // ms
    }),
  );
  await page.getByRole('button', { name: 'Use it now' }).click();
  await page.mouse.move(100, 100, { steps: 10 }); // a touch, which the version in use is not told
  await expect.poll(() => loaded.some(isNewer), { timeout: 20_000 }).toBe(true);
});

test('a tab whose newer version another tab has taken opens it too', async ({ context }) => {
  const first = await visit(context, '/');
  await stored(first.page);
  editions.hosts['/'].edition = 'newer';
  await lookForUpdate(first.page);
  await isOffered(first.page);
  const second = await visit(context, '/');
  await second.page.getByRole('button', { name: 'Use it now' }).click();
  await expect.poll(() => second.loaded.some(isNewer), { timeout: PATIENCE }).toBe(true);
  expect(first.editionsOf()).toEqual([false]);
  await first.page.getByRole('button', { name: 'Use it now' }).click();
  await expect.poll(() => first.loaded.some(isNewer), { timeout: 20_000 }).toBe(true);
});

test('the new version takes over though the one in use still waits for a file', async ({
  context,
}) => {
  const { page, loaded } = await visit(context, '/');
  await page.evaluate(() => navigator.serviceWorker.ready);
  editions.hosts['/'].edition = 'newer'; // what the older one has not fetched it will not get
  await lookForUpdate(page);
  await isOffered(page);
  editions.hosts['/'].trouble = 'hangs';
  await page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready;
    active?.postMessage('fetchRest');
  });
  await page.getByRole('button', { name: 'Use it now' }).click();
  await expect.poll(() => loaded.some(isNewer), { timeout: PATIENCE }).toBe(true);
});
