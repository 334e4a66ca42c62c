/** What the practice bench fetches before anything is done at it. */
import { test } from '@playwright/test';
import { arrivals, expectLight } from './arrivals.ts';
import { openLive } from './open-live.ts';

const SCRIPT = 45_000; // bytes, gzip; the worksheet's link and what is under the lid come when they are asked for

test(`starts with at most ${SCRIPT} bytes of script`, async ({ page }) => {
  expectLight(await arrivals(page, () => openLive(page, 'bench/')), SCRIPT);
});
