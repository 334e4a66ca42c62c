/** Ways through the site: its head, wrong addresses, addresses within a page, and what stands in a frame of others. */
import { expect } from '@playwright/test';
import { test } from './kept-page.ts';
import { PAGES } from './pages.ts';

test('the site has its parts', () => {
  const parts = ['./', './lessons/', './reference/', './reference/glossary/', './reference/units/'];
  expect(PAGES).toEqual(expect.arrayContaining(parts));
});

test('the first stop leads past the head', async ({ page }) => {
  await page.goto('./');
  await page.keyboard.press('Tab');
  await expect(page.locator('.skip')).toBeFocused();
  await expect(page.locator('.skip')).toBeInViewport();
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/#content$/);
});

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
