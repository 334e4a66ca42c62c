/** A browser with a microphone of our own listens to a plucked band, and to what is none. Nothing leaves the page. */
import { expect, type Page, type Request, test } from '@playwright/test';
import { pitchFromStress } from '../../src/core/span.ts';
import type { Sound } from '../../src/lessons/second-opinion/listening/sound.ts';
import { partialsOf, soundOf } from '../../src/lessons/second-opinion/listening/synthesis.ts';
import { NO_MICROPHONE, NO_NOTE, TAKEN } from '../../src/lessons/second-opinion/listening/words.ts';
import { stripOf } from '../../src/lessons/second-opinion/strip.ts';
import { clipped, quiet, talk } from '../lessons/second-opinion/listening/rooms.ts';
import { type Ears, withEars } from './fake-microphone.ts';
import { openLive } from './open-live.ts';

const LESSON = './lessons/second-opinion/';
const NOTHING_TAKEN = '104.9';

/** A pluck of the lesson's own span that a phone hears, its fundamental weak. */
function pluck(stress: number, rate: number): { readonly sound: Sound; readonly note: number } {
  const strip = { ...stripOf('narrow', 0.55), stress };
  const tones = [1, 2, 3, 4, 5, 6].map((harmonic) => pitchFromStress({ ...strip, harmonic }));
  const partials = partialsOf({ tones, at: 0.27, lasts: 0.7, cut: 150 });
  const made = { rate, seconds: 4, starts: 1, loudness: 0.3, noise: 0.004, seed: 8 };
  return { sound: soundOf(partials, made), note: tones[0] ?? Number.NaN };
}

const part = (page: Page) => page.locator('live-part[data-part="listening"]');
const said = (page: Page) => part(page).locator('[data-said]');
const noteBox = (page: Page) => page.locator('live-input[data-name="note"] .box');

/** Whether a request only fetches a script of the site, by a name that was there before: there is no room for sound in it. */
function isOwnScript(request: Request, base: string): boolean {
  const name = request.url().replace(`${base}assets/`, '');
  return request.method() === 'GET' && request.postData() === null && /^[\w.-]+\.js$/.test(name);
}

/** Opens the lesson and asks it to listen. */
async function listen(page: Page): Promise<void> {
  await openLive(page, LESSON);
  await page.getByText('Listen to your own band').click();
  await part(page).getByRole('button', { name: 'Listen with the microphone' }).click();
}

for (const rate of [44_100, 48_000]) {
  test(`a pluck at ${rate} samples a second is heard to 0.5 %, drawn, and sent nowhere`, async ({
    baseURL,
  }) => {
    const { sound, note } = pluck(128e6, rate);
    await withEars(sound, baseURL ?? '', async (page) => {
      const asked: Request[] = [];
      await listen(page);
      await expect(part(page).getByRole('button', { name: 'Stop listening' })).toBeVisible();
      page.on('request', (request) => asked.push(request));
      await expect(said(page)).toHaveText(/^A plucked band: /, { timeout: 20_000 });
      const heard = Number(await noteBox(page).inputValue());
      expect(Math.abs(heard / note - 1)).toBeLessThan(0.005);
      await expect(part(page).locator('svg path.steel-thin').first()).toBeAttached();
      await expect(part(page).getByRole('button', { name: 'Stop listening' })).toBeHidden();
      expect(asked.filter((request) => !isOwnScript(request, baseURL ?? ''))).toEqual([]);
    });
  });
}

/** What has words of its own is told apart by `hear`, whose tests try every kind; here one of each way to the microphone. */
const rooms: readonly (readonly [string, Ears, string])[] = [
  ['a room full of talk', talk(3, 48_000, 2), NO_NOTE.talk],
  ['a pluck that is too loud', clipped(pluck(110e6, 48_000).sound, 40), NO_NOTE.clipped],
  ['a microphone that is refused', 'refused', NO_MICROPHONE.refused],
  ['no microphone', 'absent', NO_MICROPHONE.absent],
];

for (const [name, ears, words] of rooms) {
  test(`${name} is told in words, never as a number`, async ({ baseURL }) => {
    await withEars(ears, baseURL ?? '', async (page) => {
      await listen(page);
      await expect(said(page)).toHaveText(words, { timeout: 20_000 });
      expect(await noteBox(page).inputValue()).toBe(NOTHING_TAKEN);
    });
  });
}

test('a microphone that is taken away in the middle is told, and nothing is taken from it', async ({
  baseURL,
}) => {
  await withEars(quiet(48_000, 2), baseURL ?? '', async (page) => {
    await page.addInitScript(() => {
      const { mediaDevices } = navigator;
      const ask = mediaDevices.getUserMedia.bind(mediaDevices);
      mediaDevices.getUserMedia = async (wanted) => {
        const stream = await ask(wanted);
        addEventListener('unplug', () => stream.getTracks()[0]?.dispatchEvent(new Event('ended')));
        return stream;
      };
    });
    await listen(page);
    await expect(said(page)).toHaveText(NO_NOTE.silent, { timeout: 20_000 });
    await page.evaluate(() => dispatchEvent(new Event('unplug')));
    await expect(said(page)).toHaveText(TAKEN);
    await expect(part(page).getByRole('button', { name: 'Stop listening' })).toBeHidden();
    expect(await noteBox(page).inputValue()).toBe(NOTHING_TAKEN);
  });
});

test('the recording needs no microphone, and its note goes into the box', async ({ page }) => {
  await openLive(page, LESSON);
  await page.getByText('Listen to your own band').click();
  await part(page).getByRole('button', { name: 'Try our recording' }).click();
  await expect(said(page)).toHaveText(/^A plucked band: 98\.\d+\s±\s/);
  expect(Number(await noteBox(page).inputValue())).toBeCloseTo(98.4, 0);
});

test('the note is played on request, and the band swings unless nothing may move', async ({
  page,
}) => {
  for (const reducedMotion of ['no-preference', 'reduce'] as const) {
    await page.emulateMedia({ reducedMotion });
    await openLive(page, LESSON);
    const sound = page.locator('live-part[data-part="sound"]');
    expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
    await sound.getByRole('button', { name: 'Hear this note' }).click();
    await expect(sound.locator('[data-said]')).toHaveText(/^90\.1\sHz/);
    const swinging = await page.evaluate(() => document.getAnimations().length);
    expect(swinging > 0).toBe(reducedMotion === 'no-preference');
  }
});
