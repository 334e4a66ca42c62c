/**
 * From a slider's input event to the next paint, on every lesson of the built site, phone viewport, processor slowed
 * down; the median of many movements.
 */
import { readdirSync } from 'node:fs';
import { middleAndWorst, type Open, slowDown } from './slowed-browser.ts';

const LIMIT = 40; // ms
const MOVES = 40;

/** Moves the first slider and waits for the paint after it; runs in the page. */
async function movesInPage(moves: number): Promise<number[]> {
  const slider = document.querySelector<HTMLInputElement>('live-figure input[type="range"]');
  if (!slider) return [];
  const [low, high] = [Number(slider.min), Number(slider.max)];
  const times: number[] = [];
  for (let move = 1; move <= moves; move += 1) {
    await painted();
    const start = performance.now();
    slider.value = String(low + ((high - low) * move) / (moves + 1));
    slider.dispatchEvent(new Event('input', { bubbles: true }));
    times.push((await painted()) - start);
  }
  return times;
}

async function onLesson(open: Open, slug: string): Promise<string> {
  const page = await open(`lessons/${slug}/`);
  await page.locator('live-figure').first().scrollIntoViewIfNeeded();
  await page.locator('live-figure[data-said]').first().waitFor();
  await slowDown(page);
  const times = await page.evaluate(movesInPage, MOVES);
  await page.close();
  return `slider to paint, ${slug}: ${middleAndWorst(times, LIMIT)}`;
}

/** One line a lesson: median and worst, against the limit. */
export async function sliderToPaint(open: Open): Promise<readonly string[]> {
  const lines: string[] = [];
  for (const file of readdirSync('content/lessons'))
    lines.push(await onLesson(open, file.replace('.mdx', '')));
  return lines;
}
