/** A dial on a page is read, typed, answered and followed by the next, as a reader does it. */
import { expect, type Page, test as testAlone } from '@playwright/test';
import { MARKS } from '../../src/figures/dial/hands.ts';
import { pictureOf } from '../../src/lessons/a-few-hundredths/reading/picture.ts';
import { test } from './kept-page.ts';
import { openLive } from './open-live.ts';

const reply = (page: Page) => page.locator('read-off .reply');
const box = (page: Page) => page.getByLabel('Your reading, in the dial’s unit');
const finding = (page: Page) =>
  page.locator('[data-figure="reading"] .finding').filter({ visible: true });

/** Waits until the box answers. */
const open = async (page: Page, fragment = '') => {
  await openLive(page, `./lessons/a-few-hundredths/${fragment}`);
  await page.waitForFunction(() => customElements.get('read-off') !== undefined);
};

test('ten pictures of a dial are read right, one after the other', async ({ page }) => {
  await open(page);
  for (let picture = 1; picture <= 10; picture += 1) {
    await expect(finding(page)).toContainText(`Picture ${picture}:`);
    const { before, now } = pictureOf(picture);
    await box(page).fill(String(Math.abs(now - before) / MARKS));
    await box(page).press('Enter');
    await expect(reply(page)).toHaveText(/^Yes\./);
    await page.getByRole('button', { name: 'Another picture' }).click();
    await expect(reply(page)).toHaveText('');
    await expect(box(page)).toBeFocused();
  }
  await expect(page).toHaveURL(/#v=1&picture=11$/);
});

test('a slip is named, a unit is taken, and the answer is shown when it is asked for', async ({
  page,
}) => {
  await open(page, '#v=1&face=inch');
  const answer = async (text: string) => {
    await box(page).fill(text);
    await page.getByRole('button', { name: 'Compare' }).first().click();
  };
  await answer('0.088');
  await expect(reply(page)).toHaveText(/passed zero on its way/);
  await answer('0.3048 mm');
  await expect(reply(page)).toHaveText(/^Yes\..*\sin\.$/);
  await answer('twelve');
  await expect(box(page)).toHaveAttribute('aria-invalid', 'true');
  await page.getByRole('button', { name: 'Show the answer' }).click();
  await expect(reply(page)).toHaveText(/^Before: small hand past 6/);
});

testAlone.describe('a reader of US units', () => {
  testAlone.use({ locale: 'en-US' });

  testAlone(
    'starts with a dial in thousandths of an inch, and finds the other on the switch',
    async ({ page }) => {
      await open(page);
      const choice = (words: string) => page.getByRole('radio', { name: words, exact: true });
      await expect(choice('inches')).toBeChecked();
      await page.locator('#units-metric').check({ force: true });
      await expect(choice('millimeters')).toBeChecked();
      await expect(page).not.toHaveURL(/face/);
    },
  );
});
