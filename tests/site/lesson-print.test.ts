/** A lesson on paper: no words of the screen, folds written out, the answers after everything else. */
import { expect, test } from '@playwright/test';
import { openLive } from './open-live.ts';
import { LESSONS } from './pages.ts';
import { visibleWords } from './visible-words.ts';

const OF_THE_SCREEN = /^(drag|tap|slider|button|scroll)[.,:;]?$/i;

for (const address of LESSONS) {
  test(`${address} on paper is an exercise sheet with its answers last`, async ({ page }) => {
    await openLive(page, address);
    const [check] = await page.locator('check-yourself').all();
    if (!check) throw new Error('a lesson has questions');
    await check.getByRole('button', { name: 'Other numbers' }).click();
    const because = check.locator('[data-part="because"]');
    const answers = page.locator('.answers');
    await expect(answers).toBeHidden();

    await page.emulateMedia({ media: 'print' });
    await expect(page.locator('.play-controls').first()).toBeHidden();
    await expect(page.locator('.site-head nav')).toBeHidden();
    for (const fold of await page.locator('article details').all())
      await expect(fold.locator(':scope > :not(summary)').first()).toBeVisible({
        visible: !(await fold.evaluate((element) => Boolean(element.closest('.guess, .check')))),
      });
    await expect(answers).toBeVisible();
    expect(await answers.evaluate((section) => section.nextElementSibling)).toBeNull();
    await expect(answers.locator('li').first()).toHaveText((await because.textContent()) ?? '');
    const words = await visibleWords(page);
    expect(words.filter((word) => OF_THE_SCREEN.test(word))).toEqual([]);
  });
}
