/** What the home page, each lesson and the worked examples really fetch before the reader does anything: modules that start other modules count too. */
import { readdirSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { arrivals } from './arrivals.ts';
import { openLive } from './open-live.ts';

const SCRIPT = 30_000; // bytes, gzip
const FIRST_VISIT = 140_000; // bytes of everything, packed
const lessons = readdirSync('content/lessons').map((name) => name.replace(/\.mdx$/, ''));
/** Examples with the figures that weigh most; all others have less than their lesson's page. */
const WORKED = ['finer-dial', 'quarter-turn', 'slack-by-lunch', 'dry-or-not'];

const addresses = [
  './',
  ...lessons.map((slug) => `./lessons/${slug}/`),
  ...WORKED.map((key) => `./worked/${key}/`),
];
for (const address of addresses) {
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
