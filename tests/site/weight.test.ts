/** What the home page and the worked examples really fetch before the reader does anything: modules that start other modules count too. */
import { test } from '@playwright/test';
import { arrivals, expectLight } from './arrivals.ts';
import { openLive } from './open-live.ts';

const HOME_SCRIPT = 30_000; // bytes, gzip, as many as a lesson
const EXAMPLE_SCRIPT = 32_000; // its one figure is near the screen from the start, whichever of its lesson it is
/** The examples with the figures that weigh most. */
const WORKED = ['stuck-seal', 'soft-frame', 'pluck-settles-it'];

const limits = [
  ['./', HOME_SCRIPT] as const,
  ...WORKED.map((key) => [`./worked/${key}/`, EXAMPLE_SCRIPT] as const),
];
for (const [address, limit] of limits) {
  test(`${address} starts with at most ${limit} bytes of script`, async ({ page }) => {
    expectLight(await arrivals(page, () => openLive(page, address)), limit);
  });
}
