/** What holds on every page, whatever it teaches: ways through the site, units, no script, narrow screens, paper. */
import { expect, type Page, test } from '@playwright/test';
import { PAGES } from './pages.ts';

/** Opens a page and gathers what went wrong on it: console errors, thrown errors, requests to other hosts. */
async function openWatched(page: Page, address: string): Promise<readonly string[]> {
  const faults: string[] = [];
  page.on('console', (message) => message.type() === 'error' && faults.push(message.text()));
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('request', (request) => {
    const { protocol, hostname } = new URL(request.url());
    if (/^https?:/.test(protocol) && hostname !== '127.0.0.1') faults.push(request.url());
  });
  await page.goto(address, { waitUntil: 'networkidle' });
  return faults;
}

const sideways = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

test('the site has its parts', () => {
  const parts = ['./', './lessons/', './reference/', './reference/glossary/', './reference/units/'];
  expect(PAGES).toEqual(expect.arrayContaining(parts));
});

for (const address of PAGES) {
  test(`${address} opens quietly, asks nobody else, fits a narrow screen and goes to paper`, async ({
    page,
  }) => {
    expect(await openWatched(page, address)).toEqual([]);
    await expect(page.locator('h1')).toBeVisible();
    for (const width of [320, 390]) {
      await page.setViewportSize({ width, height: 700 });
      expect(await sideways(page), `at ${width} px`).toBeLessThanOrEqual(0);
    }
    await page.emulateMedia({ media: 'print' });
    await expect(page.locator('.site-head nav')).toBeHidden();
    await expect(page.locator('.units')).toBeHidden();
    await expect(page.locator('h1')).toBeVisible();
  });
}

test('the navigation leads to every part, and says where one is', async ({ page }) => {
  await page.goto('./');
  const head = page.locator('.site-head');
  for (const name of ['Lessons', 'Worksheet', 'Examples', 'Bench', 'Reference', 'Search']) {
    const link = head.getByRole('link', { name });
    await link.click();
    await expect(link).toHaveAttribute('aria-current', 'page');
    await expect(page.locator('h1')).toBeVisible();
  }
  await page.getByRole('link', { name: 'The tension notebook' }).click();
  await expect(page.locator('h1')).toHaveText('The tension notebook');
});

test('an address that leads nowhere gets a page that leads on', async ({ page }) => {
  const response = await page.goto('no/such/page/');
  expect(response?.status()).toBe(404);
  await page.getByRole('link', { name: 'The lessons' }).click();
  await expect(page.locator('h1')).toHaveText('Lessons');
});

test('a mistyped address is answered with the nearest page', async ({ page }) => {
  await page.goto('lessons/stif-spring/');
  await page.locator('[data-nearest]').getByRole('link', { name: 'The stiff spring' }).click();
  await expect(page.locator('h1')).toHaveText('The stiff spring');
});

test('a word of the glossary and a source have an address of their own', async ({ page }) => {
  await page.goto('reference/glossary/#strain');
  await expect(page.locator('#strain')).toBeInViewport();
  await page.goto('reference/sources/#hooke');
  await expect(page.locator('#hooke')).toBeInViewport();
});

test('inside a page of another site there is nothing but a way out', async ({ page, baseURL }) => {
  await page.route(`${baseURL}`, async (route) => {
    const response = await route.fetch();
    const { 'content-security-policy': _, ...headers } = response.headers(); // as from a host that sends none
    await route.fulfill({ response, headers });
  });
  await page.route('http://elsewhere.test/', (route) =>
    route.fulfill({ contentType: 'text/html', body: `<iframe src="${baseURL}"></iframe>` }),
  );
  await page.goto('http://elsewhere.test/');
  const body = page.frameLocator('iframe').locator('body');
  await expect(body).toHaveText('Open this page by itself');
  await expect(body.getByRole('link')).toHaveAttribute('href', `${baseURL}`);
});
