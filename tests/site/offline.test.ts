/** What the service worker keeps: every page, for days without a signal. */
import { expect, test } from '@playwright/test';

test.use({ serviceWorkers: 'allow' });

test('after one visit every page opens without a signal, and still answers', async ({
  page,
  context,
}) => {
  await page.goto('./');
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((resolve) =>
      navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }),
    );
  });
  await context.setOffline(true);
  await page.goto('./lessons/stiff-spring/');
  await page.locator('live-figure').first().scrollIntoViewIfNeeded();
  await expect(page.locator('live-figure').first()).toHaveAttribute('data-said', /\d/);
  await page.goto('./worksheet/');
  await expect(page.locator('h1')).toBeVisible();
  await page.goto('./no-such-page/');
  await expect(page.locator('h1')).toBeVisible();
});
