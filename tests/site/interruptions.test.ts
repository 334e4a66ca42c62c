/**
 * What is typed outlives the page: the browser is killed, the tab closed, the page reloaded or left, at times drawn by
 * chance. KILLS and INTERRUPTIONS in the environment ask for more of them, SEED for others.
 */
import { expect, type Locator, type Page, test } from '@playwright/test';
import { randomSource } from '../../src/core/random.ts';
import { newProfile, startKillable } from './killable-browser.ts';
import { openLive, waitUntilLive } from './open-live.ts';
import { openAllParts } from './worksheet-page.ts';

const asked = (name: string, otherwise: number) => Number(process.env[name] ?? otherwise);
const [KILLS, INTERRUPTIONS, SEED] = [
  asked('KILLS', 2),
  asked('INTERRUPTIONS', 3),
  asked('SEED', 1),
];
const MOST_LOST = 1000; // ms of typing
const SHORTEST = 200; // ms of typing before a kill
const LONGEST = 4000; // fewer letters than the box takes

/** Where it is typed, in turn: words, and boxes that hold what cannot be read just as well until it can. */
const PATHS = [
  'label',
  'tensioner.cylinder.gaugeTop',
  'demands.guideSpan',
  'second.span',
  'rig.warmed',
  'mill.stripLength',
  'readings.0.pressure',
] as const;

/** The box whose turn it is, every fold around it open. */
async function boxFor(page: Page, turn: number): Promise<Locator> {
  const box = page.locator(`[data-path="${PATHS[turn % PATHS.length]}"]`);
  await openAllParts(page);
  await box.evaluate((element) => {
    for (let fold = element.closest('details'); fold; ) {
      fold.open = true;
      fold = fold.parentElement?.closest('details') ?? null;
    }
  });
  return box;
}

/** A cylinder that pulls a single strip: its boxes stand there too. */
async function chooseNewest(page: Page): Promise<void> {
  await page.getByText('a hydraulic cylinder').click();
  await openAllParts(page);
  await page.getByLabel('one strip, no wheels').check();
}

const saved = (page: Page) => expect(page.locator('.desk-picker .hint')).toContainText('Saved');

/** Types words for a time, and gives what stood there when. */
async function typeFor(
  page: Page,
  box: Locator,
  duration: number,
): Promise<readonly (readonly [number, string])[]> {
  const typed: (readonly [number, string])[] = [];
  const end = Date.now() + duration;
  let text = await box.inputValue();
  await box.focus();
  await page.keyboard.press('End');
  while (Date.now() < end) {
    const letter = String.fromCharCode(97 + (text.length % 26));
    await page.keyboard.press(letter, { delay: 60 }); // a fast hand
    text += letter;
    typed.push([Date.now(), text]);
  }
  return typed;
}

/** Starts the browser on a profile, with the worksheet open. */
async function openAgain(folder: string, site: string) {
  const started = await startKillable(folder);
  await started.page.goto(`${site}worksheet/`);
  await waitUntilLive(started.page);
  return started;
}

test(`of ${KILLS} kills of the browser none loses a sheet or more than a second`, async ({
  baseURL,
}) => {
  test.setTimeout(20_000 + KILLS * 20_000);
  const { uniform } = randomSource(SEED);
  const profile = newProfile();
  let greatest = 0;
  let { browser, page, kill } = await openAgain(profile.folder, `${baseURL}`);
  await chooseNewest(page);
  for (let count = 1; count <= KILLS; count += 1) {
    const start = `${count}.`;
    const box = await boxFor(page, count);
    await box.fill(start);
    await saved(page);
    const typed = await typeFor(page, box, SHORTEST + uniform() * (LONGEST - SHORTEST));
    const killedAt = Date.now();
    await kill();
    await browser.close().catch(() => undefined);
    ({ browser, page, kill } = await openAgain(profile.folder, `${baseURL}`));
    const kept = await (await boxFor(page, count)).inputValue();
    const firstLost = typed.find(([, text]) => text.length > kept.length);
    expect(kept.startsWith(start)).toBe(true);
    expect(typed.at(-1)?.[1].startsWith(kept)).toBe(true);
    greatest = Math.max(greatest, firstLost ? killedAt - firstLost[0] : 0);
    expect(greatest).toBeLessThan(MOST_LOST);
    if (count % 20 === 0) console.log(`typing lost in ${count} kills: at most ${greatest} ms`);
  }
  await kill();
  await browser.close().catch(() => undefined);
  profile.remove();
});

const WAYS: Readonly<Record<string, (page: Page) => Promise<unknown>>> = {
  'a reload': (page) => page.reload(),
  'a way to another page': (page) => page.goto('./reference/'),
  'a tab closed': (page) => page.close({ runBeforeUnload: false }),
};

test(`of ${INTERRUPTIONS} pages reloaded, left or closed while typing none loses a letter`, async ({
  context,
}) => {
  test.setTimeout(20_000 + INTERRUPTIONS * 10_000);
  const { uniform } = randomSource(SEED);
  let page = await context.newPage();
  await openLive(page, 'worksheet/');
  await chooseNewest(page);
  for (let count = 0; count < INTERRUPTIONS; count += 1) {
    const box = await boxFor(page, count);
    await box.fill('a');
    await saved(page);
    const typed = await typeFor(page, box, uniform() * 400);
    const last = typed.at(-1)?.[1] ?? 'a';
    const interrupt = Object.values(WAYS)[count % 3];
    await interrupt?.(page);
    if (page.isClosed()) page = await context.newPage();
    await openLive(page, 'worksheet/');
    await expect(await boxFor(page, count)).toHaveValue(last);
  }
});
