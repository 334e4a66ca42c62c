/** Every worked example in the browser: at its own numbers with script and without, in both unit systems, and the one change. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, type Page, test as testAlone } from '@playwright/test';
import { test } from './kept-page.ts';
import { openLive } from './open-live.ts';

const KEYS = readdirSync('content/worked').map((name) => name.replace(/\.yaml$/, ''));
const addressOf = (key: string) => `./worked/${key}/`;
const seen = (page: Page, selector: string) => page.locator(selector).filter({ visible: true });
const PHONE = { width: 390, height: 844 };

/** A reader of one unit system sees the figure's finding as it was built, once a figure below the screen has come to rest. */
async function findsAsBuilt(page: Page, key: string, system: 'metric' | 'us'): Promise<string> {
  await page.locator(`#units-${system}`).check({ force: true });
  const finding = builtFinding(key, system);
  await expect(seen(page, '.finding'), key).toHaveText(finding);
  return finding;
}

/** The finding that the build wrote for a phone. */
const builtFinding = (key: string, system: 'metric' | 'us'): string =>
  readFileSync(`dist/worked/${key}/index.html`, 'utf8').match(
    new RegExp(`id="[\\w-]+-${system}-narrow-finding"[^>]*>([^<]*)<`),
  )?.[1] ?? '';

/** Presses the button, looks, and starts again. */
async function changeOne(page: Page, key: string, finding: string): Promise<void> {
  const change = page.locator('change-one');
  await expect(change.locator('[data-then]')).toBeHidden();
  await change.getByRole('button').click();
  await expect(change.locator('[data-then]')).toBeVisible();
  const input = await change.getAttribute('data-input');
  await expect(page, key).toHaveURL(new RegExp(`#v=1&(.*&)?${input}=`));
  if (key !== 'stretch-to-stress') await expect(seen(page, '.finding')).not.toHaveText(finding);
  await page.getByRole('button', { name: 'Start again' }).click();
  await expect(seen(page, '.finding'), key).toHaveText(finding);
  await expect(page, key).not.toHaveURL(/#/);
}

for (const part of [0, 1]) {
  test(`each example starts at its own numbers, part ${part + 1}`, async ({ page }) => {
    await page.setViewportSize(PHONE);
    for (const key of KEYS.filter((_, place) => place % 2 === part)) {
      await openLive(page, addressOf(key));
      await findsAsBuilt(page, key, 'us');
      await expect(page.locator('.answer .q-metric').filter({ visible: true })).toHaveCount(0);
      await changeOne(page, key, await findsAsBuilt(page, key, 'metric'));
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide, key).toBeLessThanOrEqual(PHONE.width);
    }
  });
}

testAlone.describe('without script', () => {
  testAlone.use({ javaScriptEnabled: false, viewport: PHONE });

  testAlone('an example is complete, in both unit systems', async ({ page }) => {
    await page.goto(addressOf('greased-screw'));
    await expect(page.locator('.needs-script:visible')).toHaveCount(0);
    await expect(page.locator('change-one [data-then]')).toBeVisible();
    await expect(seen(page, 'figure svg')).toHaveCount(1);
    for (const system of ['us', 'metric'] as const) {
      await findsAsBuilt(page, 'greased-screw', system);
      await expect(seen(page, `.answer .q-${system}`)).toHaveCount(2);
    }
  });
});

/** Opens an address anew, not as a change of the fragment. */
async function openAnew(page: Page, address: string): Promise<void> {
  await page.goto('about:blank');
  await openLive(page, address);
}

test('a link keeps what was set, and a damaged one opens the example and says so', async ({
  page,
}) => {
  await openAnew(page, './worked/slack-zero/#v=1&load=5&side=outer');
  await expect(page.getByRole('radio', { name: 'the outer side' })).toBeChecked();
  await expect(seen(page, '.finding')).toContainText('5.00');
  await openAnew(page, './worked/slack-zero/#v=1&load=much');
  await expect(page.locator('[data-link-refused]')).toContainText('load=much');
  await page.setViewportSize(PHONE);
  await expect(seen(page, '.finding')).toHaveText(builtFinding('slack-zero', 'metric'));
});

test('the lesson and the worksheet open with the example’s numbers', async ({ page }) => {
  for (const key of ['greased-screw', 'quarter-turn']) {
    await openLive(page, addressOf(key));
    const figure = await page.locator('live-figure').getAttribute('data-figure');
    await page.getByRole('link', { name: /^Open the lesson .* with these numbers$/ }).click();
    await page.waitForSelector('html[data-live="ready"]');
    await page.locator('details.fold').evaluateAll((all) => {
      for (const fold of all) fold.setAttribute('open', '');
    });
    const there = page.locator(`[data-figure="${figure}"]`);
    await there.scrollIntoViewIfNeeded();
    await expect(there.locator('.finding').filter({ visible: true })).toHaveText(
      builtFinding(key, 'metric'),
    );
  }
  await openLive(page, './worked/slack-zero/');
  await page
    .getByRole('link', { name: 'Open the worksheet with the sheet of Ottersleigh' })
    .click();
  await page.waitForSelector('html[data-live="ready"]');
  await expect(page.locator('[data-path="band.bodyWidth"]')).toHaveValue('29');
});
