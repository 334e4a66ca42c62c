/** From a word in a lesson's text to its meaning at the foot and back, with what the reader has set left as it is. */
import { expect } from '@playwright/test';
import { test } from './kept-page.ts';
import { openLive } from './open-live.ts';

test('a word leads to its meaning and back, and the figure stays as it was set', async ({
  page,
}) => {
  await openLive(page, './lessons/counting-turns/#v=1&turnsBoth=0.75');
  const word = page.locator('#use-slack');
  await word.click();
  await expect(page.locator('#word-slack')).toBeInViewport();
  await page.getByRole('link', { name: /^Back to the text\s+about slack$/ }).click();
  await expect(word).toBeInViewport();
  const finding = page.locator('live-figure').first().locator('.finding').filter({ visible: true });
  await expect(finding).toHaveText(/^0\.75\sturns of both nuts/);
});
