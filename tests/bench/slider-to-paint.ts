/**
 * From a slider's input event to the next paint, on every lesson of the built site, phone viewport, processor slowed
 * down four times; the median of many movements.
 */
import { spawn } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { type Browser, chromium, type Page } from '@playwright/test';
import { findChromium } from '../../.ci/browser.mjs';

const PORT = 4390;
const LIMIT = 50; // ms
const SLOW_DOWN = 4;
const MOVES = 40;

/** Moves the first slider and waits for the paint after it; runs in the page. */
async function movesInPage(moves: number): Promise<number[]> {
  const slider = document.querySelector<HTMLInputElement>('live-figure input[type="range"]');
  if (!slider) return [];
  const painted = () =>
    new Promise<number>((resolve) => {
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => resolve(performance.now());
        port2.postMessage(0);
      });
    });
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

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}

async function openSlowly(browser: Browser, slug: string): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
  await page.goto(`http://127.0.0.1:${PORT}/lessons/${slug}/`);
  await page.locator('live-figure').first().scrollIntoViewIfNeeded();
  await page.locator('live-figure[data-said]').first().waitFor();
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOW_DOWN });
  return page;
}

async function waitForServer(): Promise<void> {
  for (let attempt = 0; attempt < 100; attempt += 1) {
    const answer = await fetch(`http://127.0.0.1:${PORT}/`).catch(() => undefined);
    if (answer) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

/** One line a lesson: median and worst, against the limit. */
export async function sliderToPaint(): Promise<readonly string[]> {
  const server = spawn(process.execPath, ['.ci/server.mjs', 'dist', '/', String(PORT)]);
  const executablePath = await findChromium();
  const browser = await chromium.launch({
    ...(executablePath && { executablePath }),
    args: ['--no-sandbox', '--disable-background-networking'],
  });
  try {
    await waitForServer();
    const lines: string[] = [];
    for (const slug of readdirSync('content/lessons').map((file) => file.replace('.mdx', ''))) {
      const page = await openSlowly(browser, slug);
      const times = await page.evaluate(movesInPage, MOVES);
      const [middle, worst] = [median(times), Math.max(...times)].map((ms) => ms.toFixed(1));
      lines.push(
        `slider to paint, ${slug}: median ${middle} ms, worst ${worst} ms at ${SLOW_DOWN} x slow-down (limit ${LIMIT} ms, median)`,
      );
      await page.close();
    }
    return lines;
  } finally {
    await browser.close();
    server.kill();
  }
}
