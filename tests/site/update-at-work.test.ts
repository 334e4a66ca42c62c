/** An update while a sheet is worked on: its late parts are of the version that the page is of. */
import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { waitUntilLive } from './open-live.ts';
import { isNewer, isOfAnEdition, serveEditions } from './two-editions.ts';
import { isOffered, lookForUpdate, PATIENCE, stored, visitPage } from './visits.ts';

type Editions = Awaited<ReturnType<typeof serveEditions<'/'>>>;

test.use({ serviceWorkers: 'allow', reuseContext: false });

let editions: Editions;
test.beforeEach(async () => {
  editions = await serveEditions({ '/': 'dist' }, 'with the worksheet');
});
test.afterEach(() => editions.close());

test.describe.configure({ timeout: 150_000 });

const visit = (context: BrowserContext, path: string) => visitPage(context, editions.origin + path);

/** The worksheet's examples, and the chart that they bring: parts that a page fetches late. */
async function useWorksheet(page: Page): Promise<void> {
  await page.locator('.desk-offer button').first().click();
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('.part > details'))
      fold.open = true;
  });
  await expect(page.locator('[data-result="stress"]')).toContainText('MPa');
  await expect(page.locator('[data-result="predicted"]')).toContainText('MPa');
}

test('an old tab goes on, a new tab is of the same version, and the new version is offered', async ({
  context,
}) => {
  const old = await visit(context, '/worksheet/');
  await stored(old.page);
  editions.hosts['/'].edition = 'newer';
  await lookForUpdate(old.page);
  await isOffered(old.page);
  await old.page.reload();
  await waitUntilLive(old.page);
  expect(old.editionsOf()).toEqual([false]);
  await useWorksheet(old.page);

  const second = await visit(context, '/lessons/stiff-spring/');
  await second.page.locator('live-figure').first().scrollIntoViewIfNeeded();
  await expect(second.page.locator('live-figure').first()).toHaveAttribute('data-said', /\d/);
  expect(second.editionsOf()).toEqual([false]);
  await isOffered(second.page);

  await second.page.getByRole('button', { name: 'Use it now' }).click();
  await expect.poll(() => second.loaded.some(isNewer), { timeout: PATIENCE }).toBe(true);
  await waitUntilLive(second.page);
  expect(second.editionsOf()).toEqual([true]);

  const late = old.loaded.find((address) => isOfAnEdition(address) && address.endsWith('.js'));
  expect(await old.page.evaluate((address) => fetch(address).then(({ ok }) => ok), `${late}`)).toBe(
    true,
  );
  expect(old.editionsOf()).toEqual([false]);
  await old.page.reload();
  await waitUntilLive(old.page);
  await expect(old.page.locator('#box-label')).not.toHaveValue('');
});
