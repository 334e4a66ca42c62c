/** What the service worker keeps: every page, for days without a signal. */
import { expect, test } from '@playwright/test';

test.use({ serviceWorkers: 'allow', reuseContext: false });

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

test('what is to be kept waits while the reader is at work', async ({ page }) => {
  await page.addInitScript(() => {
    const touching = setInterval(() => dispatchEvent(new Event('input')), 50);
    addEventListener('rest', () => clearInterval(touching));
  });
  await page.goto('./');
  const registered = () => navigator.serviceWorker.getRegistration();
  const stored = () =>
    page.evaluate(async () => {
      const [name] = await caches.keys();
      return name ? (await (await caches.open(name)).keys()).length : 0;
    });
  await page.waitForFunction(registered);
  await page.waitForFunction(() => performance.now() > 4000); // longer than all of it takes at rest
  expect(await stored()).toBeLessThan(20);
  await page.evaluate(() => dispatchEvent(new Event('rest')));
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  expect(await stored()).toBeGreaterThan(20);
});
