/** What the home page and each lesson really fetch before the reader does anything: modules that start other modules count too. */
import { readdirSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { expect, test } from '@playwright/test';
import { openLive } from './open-live.ts';

const BUDGET = 35_000; // bytes of script, gzip
const lessons = readdirSync('content/lessons').map((name) => name.replace(/\.mdx$/, ''));

for (const address of ['./', ...lessons.map((slug) => `./lessons/${slug}/`)]) {
  test(`${address} starts with at most ${BUDGET} bytes of script`, async ({ page }) => {
    const bodies: Promise<Buffer>[] = [];
    page.on('response', (response) => {
      if (response.request().resourceType() === 'script') bodies.push(response.body());
    });
    await openLive(page, address);
    await page.waitForLoadState('networkidle');
    const weights = (await Promise.all(bodies)).map((body) => gzipSync(body, { level: 9 }).length);
    expect(weights.length).toBeGreaterThan(0);
    expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeLessThanOrEqual(BUDGET);
  });
}
