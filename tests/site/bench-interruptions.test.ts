/**
 * What is written down on the bench outlives the page: the browser is killed, the tab closed, the page reloaded, at
 * moments drawn by chance. KILLS and INTERRUPTIONS in the environment ask for more of them, SEED for others.
 */
import { expect, type Page, test } from '@playwright/test';
import { randomSource } from '../../src/core/random.ts';
import { newProfile, startKillable } from './killable-browser.ts';
import { openLive, waitUntilLive } from './open-live.ts';

const asked = (name: string, otherwise: number) => Number(process.env[name] ?? otherwise);
const [KILLS, INTERRUPTIONS, SEED] = [
  asked('KILLS', 2),
  asked('INTERRUPTIONS', 3),
  asked('SEED', 1),
];
const MILL = 'bench/#v=1&seed=7&level=nasty';
const SOON = 150; // ms after which what is written must be on the disk
const LATER = 900; // ms, by when most browsers have not yet written their quick store

const dials = (page: Page) =>
  page
    .locator('.bench-rows tbody input')
    .evaluateAll((boxes) => boxes.map((box) => (box as HTMLInputElement).value));

/** Turns, reads and writes a row, and types half of the next; gives what must be there afterwards. */
async function workOn(page: Page, count: number) {
  await page.locator('#bench-wrench').fill(String(3 + 0.5 * count));
  await page.locator('#bench-wrench').press('Enter');
  await page.locator('#bench-reading').fill((5 + 0.01 * count).toFixed(2));
  await page.locator('#bench-reading').press('Enter');
  await expect(page.locator('#bench-finding')).toContainText('is written');
  await page.locator('#bench-reading').fill('5.');
  return { rows: await dials(page), wrench: String(3 + 0.5 * count) };
}

type Left = Awaited<ReturnType<typeof workOn>>;

async function expectKept(page: Page, left: Left): Promise<void> {
  await expect(page.locator('.bench-name')).toContainText('Mill 7: everything at once');
  await expect.poll(() => dials(page)).toEqual(left.rows);
  await expect(page.locator('#bench-wrench')).toHaveValue(left.wrench);
  await expect(page.locator('#bench-reading')).toHaveValue('5.');
}

async function openAgain(folder: string, site: string) {
  const started = await startKillable(folder);
  await started.page.goto(`${site}${MILL}`);
  await waitUntilLive(started.page);
  return started;
}

test(`of ${KILLS} kills of the browser none loses a row`, async ({ baseURL }) => {
  test.setTimeout(20_000 + KILLS * 20_000);
  const { uniform } = randomSource(SEED);
  const profile = newProfile();
  let { browser, page, kill } = await openAgain(profile.folder, `${baseURL}`);
  await page.getByRole('button', { name: /^Clamp for/ }).click();
  for (let count = 1; count <= KILLS; count += 1) {
    const left = await workOn(page, count);
    await page.waitForTimeout(SOON + uniform() * (LATER - SOON));
    await kill();
    await browser.close().catch(() => undefined);
    ({ browser, page, kill } = await openAgain(profile.folder, `${baseURL}`));
    await expectKept(page, left);
    expect(left.rows).toHaveLength(count);
  }
  await kill();
  await browser.close().catch(() => undefined);
  profile.remove();
});

const WAYS: readonly ((page: Page) => Promise<unknown>)[] = [
  (page) => page.reload(),
  (page) => page.goto('./reference/'),
  (page) => page.close({ runBeforeUnload: false }),
];

test(`of ${INTERRUPTIONS} pages reloaded, left or closed at work none loses a letter`, async ({
  context,
}) => {
  test.setTimeout(20_000 + INTERRUPTIONS * 10_000);
  const { uniform } = randomSource(SEED);
  let page = await context.newPage();
  await openLive(page, MILL);
  await page.getByRole('button', { name: /^Clamp for/ }).click();
  for (let count = 1; count <= INTERRUPTIONS; count += 1) {
    const left = await workOn(page, count);
    await page.waitForTimeout(uniform() * 50);
    await WAYS[count % WAYS.length]?.(page);
    if (page.isClosed()) page = await context.newPage();
    await openLive(page, MILL);
    await expectKept(page, left);
  }
});
