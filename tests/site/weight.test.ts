/** What the home page and each lesson really fetch before the reader does anything: modules that start other modules count too. */
import { readdirSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { arrivals } from './arrivals.ts';
import { openLive } from './open-live.ts';

const SCRIPT = 30_000; // bytes, gzip
const FIRST_VISIT = 140_000; // bytes of everything, packed
const lessons = readdirSync('content/lessons').map((name) => name.replace(/\.mdx$/, ''));

for (const address of ['./', ...lessons.map((slug) => `./lessons/${slug}/`)]) {
  test(`${address} starts with at most ${SCRIPT} bytes of script, ${FIRST_VISIT} in all`, async ({
    page,
  }) => {
    const { script, all } = await arrivals(page, () => openLive(page, address));
    expect(script).toBeGreaterThan(10_000);
    expect(script).toBeLessThanOrEqual(SCRIPT);
    expect(all).toBeGreaterThan(script);
    expect(all).toBeLessThanOrEqual(FIRST_VISIT);
  });
}
