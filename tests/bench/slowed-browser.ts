/** The built site in a browser of a phone's width whose processor is slowed down, for timings. */
import { spawn } from 'node:child_process';
import { type Browser, chromium, type Page } from '@playwright/test';
import { findChromium } from '../../.ci/browser.mjs';

const PORT = 4390;
export const SLOW_DOWN = 4;

/** Opens pages of the site. */
export type Open = (address: string) => Promise<Page>;

async function waitForServer(): Promise<void> {
  for (let attempt = 0; attempt < 100; attempt += 1) {
    const answer = await fetch(`http://127.0.0.1:${PORT}/`).catch(() => undefined);
    if (answer) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

declare global {
  /** The time at the end of the next paint, ms. */
  var painted: () => Promise<number>;
}

/** Gives the page `painted`; runs in the page before its own scripts. */
function givePainted(): void {
  globalThis.painted = () =>
    new Promise((resolve) => {
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => resolve(performance.now());
        port2.postMessage(0);
      });
    });
}

const openIn =
  (browser: Browser): Open =>
  async (address) => {
    const page = await browser.newPage({ viewport: { width: 390, height: 844 }, locale: 'en-GB' });
    await page.addInitScript(givePainted);
    await page.goto(`http://127.0.0.1:${PORT}/${address}`);
    return page;
  };

/** Slows the page's processor down from here on. */
export async function slowDown(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOW_DOWN });
}

/** Runs something with the site served and a browser open, and ends both. */
export async function withSite<Value>(run: (open: Open) => Promise<Value>): Promise<Value> {
  const server = spawn(process.execPath, ['.ci/server.mjs', 'dist', '/', String(PORT)]);
  const executablePath = await findChromium();
  const browser = await chromium.launch({
    ...(executablePath && { executablePath }),
    args: ['--no-sandbox', '--disable-background-networking'],
  });
  try {
    await waitForServer();
    return await run(openIn(browser));
  } finally {
    await browser.close();
    server.kill();
  }
}

/** Median and worst of some times in ms, as a sentence's end. */
export function middleAndWorst(times: readonly number[], limit: number): string {
  const sorted = [...times].sort((a, b) => a - b);
  const [middle, worst] = [sorted[Math.floor(sorted.length / 2)], sorted.at(-1)].map(
    (ms) => ms?.toFixed(1) ?? 'nothing',
  );
  return `median ${middle} ms, worst ${worst} ms at ${SLOW_DOWN} x slow-down (limit ${limit} ms, median)`;
}
