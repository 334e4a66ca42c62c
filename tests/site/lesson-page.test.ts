/** What the whole page of a lesson owes beside its first figure: its links, and paper. */
import { expect, type Page, test as testAlone } from '@playwright/test';
import { test } from './kept-page.ts';
import { openLive, waitUntilLive } from './open-live.ts';

/** Opens what is folded away, as a reader does, and as paper does by itself. */
const unfold = (page: Page) =>
  page.locator('details.fold').evaluateAll((all) => {
    for (const fold of all) fold.setAttribute('open', '');
  });

test('a link’s state goes to paper in every figure, also far from the screen', async ({ page }) => {
  await page.goto('./lessons/counting-turns/');
  const far = page.locator('[data-figure="frame"]').locator('.finding').filter({ visible: true });
  await unfold(page);
  const before = (await far.textContent()) ?? '';
  await page.goto('./lessons/counting-turns/#v=1&readStretch=0.0002');
  await page.reload();
  await waitUntilLive(page);
  await unfold(page);
  await expect(far).toHaveText(before);
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await expect(far).not.toHaveText(before);
});

test('a choice opens from an old link’s number, and is kept in the link by its name', async ({
  page,
}) => {
  await openLive(page, './lessons/counting-turns/#v=1&tensioner=2');
  await unfold(page);
  const choice = (words: string) => page.getByRole('radio', { name: words });
  await expect(choice('Yarrock')).toBeChecked();
  await expect(page.locator('live-input[data-name="turnsSoft"]')).toBeVisible();
  await choice('Dunmarrow').check();
  await expect(page).toHaveURL(/#v=1&tensioner=oil$/);
  await expect(page.locator('live-input[data-name="pressure"]')).toBeVisible();
  await expect(page.locator('live-input[data-name="turnsSoft"]')).toBeHidden();
});

testAlone.describe('a reader of US units', () => {
  testAlone.use({ locale: 'en-US' });

  testAlone('finds them in every box before the lesson’s script is there', async ({ page }) => {
    const scripts = /\/assets\/(?!(parts-)?before-paint).*\.js$/;
    await page.route(scripts, (route) => route.abort());
    await page.goto('./lessons/handle-to-band/');
    const stiffness = page.locator('live-input[data-name="frameStiffness"]');
    const shown = () => stiffness.locator('.box').inputValue();
    await expect(stiffness.locator('.unit')).toHaveText(/lbf\/in/, { useInnerText: true });
    const before = await shown();
    await page.unroute(scripts);
    await openLive(page, './lessons/handle-to-band/');
    expect(before).toBe(await shown());
  });
});
