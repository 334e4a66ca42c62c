/** What a lesson asks of a reader on a phone before anything is opened: its words, its screens, and a guess at once. */
import { expect, test } from '@playwright/test';
import { openLive } from './open-live.ts';
import { LESSONS } from './pages.ts';
import { visibleWords } from './visible-words.ts';

const PHONE = { width: 390, height: 844 };
const MOST_WORDS = 900;
const MOST_SCREENS = 8;

for (const address of LESSONS) {
  test(`${address} fits a phone, and begins with a guess`, async ({ page }) => {
    await page.setViewportSize(PHONE);
    await openLive(page, address);
    for (const system of ['metric', 'us']) {
      await page.locator(`#units-${system}`).check({ force: true });
      const guess = page.locator('guess-first');
      await expect(guess.locator('.slider')).toBeInViewport({ ratio: 1 });
      await expect(guess.getByRole('button')).toBeInViewport({ ratio: 1 });
      const words = (await visibleWords(page)).length;
      expect(words, system).toBeGreaterThan(300);
      expect(words, system).toBeLessThanOrEqual(MOST_WORDS);
      const screens = await page.evaluate(
        () => document.documentElement.scrollHeight / innerHeight,
      );
      expect(screens, system).toBeLessThanOrEqual(MOST_SCREENS);
    }
  });
}
