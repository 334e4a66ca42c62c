/** The site in a sub-folder of a host: it finds its parts and its pages there, and never asks above its folder. */
import { expect } from '@playwright/test';
import { test } from './kept-page.ts';

test('a page in a sub-folder finds all its parts, and its links stay in the folder', async ({
  page,
  baseURL,
}) => {
  const answers: { readonly address: string; readonly status: number }[] = [];
  page.on('response', (response) => {
    answers.push({ address: response.url(), status: response.status() });
  });
  await page.goto('./', { waitUntil: 'networkidle' });
  const links = await page
    .locator('a[href]')
    .evaluateAll((anchors: HTMLAnchorElement[]) => anchors.map((anchor) => anchor.href));
  for (const link of new Set(links.filter((address) => address.startsWith('http://127.0.0.1')))) {
    await page.goto(link);
  }
  expect(answers.length).toBeGreaterThan(1);
  expect(answers.filter(({ status }) => status >= 400)).toEqual([]);
  expect(answers.filter(({ address }) => !address.startsWith(baseURL ?? 'nowhere'))).toEqual([]);
});

test('an address that is not in the folder gets the page for wrong addresses', async ({ page }) => {
  const response = await page.goto('no-such-page/');
  expect(response?.status()).toBe(404);
  await expect(page.locator('h1')).toHaveCount(1);
});
