/** An update on hosts that do everything wrong: each visit is of one version, or says why not. */
import { type BrowserContext, expect, test } from '@playwright/test';
import { SUB_FOLDER } from '../../.ci/steps.mjs';
import { isNewer, serveEditions } from './two-editions.ts';
import { isOffered, line, lookForUpdate, PATIENCE, stored, visitPage } from './visits.ts';

const BUILDS = { '/': 'dist', [SUB_FOLDER.base]: SUB_FOLDER.folder };

type Editions = Awaited<ReturnType<typeof serveEditions<'/'>>>;

test.use({ serviceWorkers: 'allow', reuseContext: false });

let editions: Editions;
test.beforeEach(async () => {
  editions = await serveEditions(BUILDS);
});
test.afterEach(() => editions.close());

test.describe.configure({ timeout: 150_000 });

const FOOT_LINE = /foot-line/; // the script of the line at the foot

const visit = (context: BrowserContext, path: string) => visitPage(context, editions.origin + path);

test('a visit after all tabs are closed is of the new version, offline too', async ({
  context,
}) => {
  const old = await visit(context, '/');
  await stored(old.page);
  editions.hosts['/'].edition = 'newer';
  await lookForUpdate(old.page);
  await isOffered(old.page);
  await old.page.goto('about:blank');
  await old.page.close();
  await expect(async () => {
    const { page, editionsOf } = await visit(context, '/lessons/stiff-spring/');
    const found = editionsOf();
    await page.close();
    expect(found).toEqual([true]);
  }).toPass();
  const names = await visit(context, '/').then(({ page }) => page.evaluate(() => caches.keys()));
  expect(names).toHaveLength(1);
  await context.setOffline(true);
  const { editionsOf } = await visit(context, '/search');
  expect(editionsOf()).toEqual([true]);
});

test('a new version that misses a part waits until it is whole; without a font it is taken', async ({
  context,
}) => {
  const { page } = await visit(context, '/');
  await stored(page);
  const host = editions.hosts['/'];
  Object.assign(host, { edition: 'newer', missing: 'lessons/stiff-spring/index.html' });
  await lookForUpdate(page);
  await page.reload();
  await expect(line(page, 'stored')).toContainText('The whole notebook', { timeout: PATIENCE });
  await expect(line(page, 'version')).toBeHidden();
  const font = await page.evaluate(() =>
    document.querySelector('link[as="font"]')?.getAttribute('href'),
  );
  host.missing = `${font}`.slice(1).replace(/\.([\w-]{8,})\.woff2$/, '.newer-$1.woff2');
  await lookForUpdate(page);
  await isOffered(page);
});

test('a host that fails, hangs or asks to sign in is not heard while the site is kept', async ({
  context,
}) => {
  const { page } = await visit(context, '/');
  await stored(page);
  for (const trouble of ['fails', 'asks to sign in', 'hangs'] as const) {
    Object.assign(editions.hosts['/'], { edition: 'newer', trouble });
    const next = await visit(context, '/lessons/stiff-spring/');
    await expect(next.page.locator('live-figure').first()).toHaveAttribute('data-said', /\d/);
    expect(next.editionsOf()).toEqual([false]);
    await next.page.close();
  }
  const lost = await visit(context, '/no-such-page/');
  await expect(lost.page.locator('h1')).toBeVisible();
});

test('a first visit on which a part is missing says that nothing is kept', async ({ context }) => {
  editions.hosts['/'].missing = 'lessons/stiff-spring/index.html';
  const { page } = await visit(context, '/');
  await expect(line(page, 'stored')).toContainText('could not be put on this device');
});

test('a first visit to a host that soon asks to sign in keeps nothing of what it sends', async ({
  context,
}) => {
  const host = editions.hosts['/'];
  host.signsOutWith = 'sw.js';
  const first = await visit(context, '/');
  await expect.poll(() => host.trouble).toBe('asks to sign in');
  expect(await first.page.evaluate(() => caches.keys())).toEqual([]);
  const lineCame = context.waitForEvent('response', (response) => FOOT_LINE.test(response.url()));
  Object.assign(host, {
    signsOutWith: 'lessons/stiff-spring/index.html',
    signsOutAfter: lineCame,
    trouble: 'none',
  });
  const second = await visit(context, '/');
  await expect(line(second.page, 'stored')).toContainText('could not be put on this device');
  expect([...first.faults, ...second.faults]).toEqual([]);
  Object.assign(host, { signsOutWith: '', trouble: 'none' });
  await stored((await visit(context, '/')).page);
});

test('a page that looks after the keeping has failed says that nothing is kept', async ({
  context,
}) => {
  Object.assign(editions.hosts['/'], { missing: 'lessons/stiff-spring/index.html' });
  const page = await context.newPage();
  await page.setViewportSize({ width: 390, height: 300 }); // the foot is not seen
  await page.goto(editions.origin);
  await page.evaluate(() => navigator.serviceWorker.register('/sw.js').then(() => undefined));
  const isRegistered = async () => (await navigator.serviceWorker.getRegistration()) !== undefined;
  await expect.poll(() => page.evaluate(isRegistered)).toBe(false);
  await page.locator('.site-foot').scrollIntoViewIfNeeded();
  await expect(line(page, 'stored')).toContainText('could not be put on this device');
});

test('two copies on one host leave each other’s store alone', async ({ context }) => {
  const first = await visit(context, SUB_FOLDER.base);
  await stored(first.page);
  await first.page.close();
  const second = await visit(context, '/');
  await stored(second.page);
  editions.hosts['/'].edition = 'newer';
  await lookForUpdate(second.page);
  await second.page.getByRole('button', { name: 'Use it now' }).click();
  await expect.poll(() => second.loaded.some(isNewer), { timeout: PATIENCE }).toBe(true);
  await stored(second.page);
  await context.setOffline(true);
  const { page, editionsOf } = await visit(context, `${SUB_FOLDER.base}lessons/stiff-spring/`);
  await expect(page.locator('h1')).toBeVisible();
  expect(editionsOf()).toEqual([false]);
});
