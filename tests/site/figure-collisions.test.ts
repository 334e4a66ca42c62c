/** In no figure of a lesson, in no state, do words cover one another, a grip or a line of data, or leave the sheet. */
import { expect } from '@playwright/test';
import { test } from './kept-page.ts';
import { lessonCollisions } from './lesson-collisions.ts';
import { LESSONS } from './pages.ts';

for (const address of LESSONS) {
  test(`nothing collides in the figures of ${address}`, async ({ page }) => {
    test.setTimeout(180_000);
    expect(await lessonCollisions(page, address)).toEqual([]);
  });
}
