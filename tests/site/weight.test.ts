/** What the home page, each lesson and the worked examples really fetch before the reader does anything: modules that start other modules count too. */
import { readdirSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { arrivals } from './arrivals.ts';
import { openLive } from './open-live.ts';

const SCRIPT = 30_000; // bytes, gzip
const EXAMPLE_SCRIPT = 32_000; // its one figure is near the screen from the start, whichever of its lesson it is
const FIRST_VISIT = 140_000; // bytes of everything, packed
const lessons = readdirSync('content/lessons').map((name) => name.replace(/\.mdx$/, ''));
/** The examples with the figures that weigh most. */
const WORKED = ['stuck-seal', 'soft-frame', 'pluck-settles-it'];

const limits = [
  ...['./', ...lessons.map((slug) => `./lessons/${slug}/`)].map((to) => [to, SCRIPT] as const),
  ...WORKED.map((key) => [`./worked/${key}/`, EXAMPLE_SCRIPT] as const),
];
for (const [address, limit] of limits) {
  test(`${address} starts with at most ${limit} bytes of script, ${FIRST_VISIT} in all`, async ({
    page,
  }) => {
    const { script, all } = await arrivals(page, () => openLive(page, address));
    expect(script).toBeGreaterThan(10_000);
    expect(script).toBeLessThanOrEqual(limit);
    expect(all).toBeGreaterThan(script);
    expect(all).toBeLessThanOrEqual(FIRST_VISIT);
  });
}
