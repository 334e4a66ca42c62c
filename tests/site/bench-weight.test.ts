/** What the practice bench fetches before anything is done at it. */
import { expect, test } from '@playwright/test';
import { arrivals } from './arrivals.ts';
import { openLive } from './open-live.ts';

const SCRIPT = 45_000; // bytes, gzip; the worksheet's link and what is under the lid come when they are asked for
const FIRST_VISIT = 140_000; // bytes of everything, packed: as many as a lesson

test(`starts with at most ${SCRIPT} bytes of script, ${FIRST_VISIT} in all`, async ({ page }) => {
  const { script, all } = await arrivals(page, () => openLive(page, 'bench/'));
  expect(script).toBeGreaterThan(10_000);
  expect(script).toBeLessThanOrEqual(SCRIPT);
  expect(all).toBeGreaterThan(script);
  expect(all).toBeLessThanOrEqual(FIRST_VISIT);
});
