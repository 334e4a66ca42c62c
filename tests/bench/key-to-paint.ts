/**
 * From a key in a box of the worksheet to the paint after the last change that it makes on the page, but for what is
 * tried out a while later: the stress by trials, and the advice beside a rough measurement. Phone viewport, processor slowed down, the box's part open.
 */
import type { Page } from '@playwright/test';
import { longSheet } from '../site/fullest-sheet.ts';
import { middleAndWorst, type Open, slowDown } from './slowed-browser.ts';

const LIMITS = { 12: 33, 200: 100 } as const; // ms by rows
const KEYS = 11;

/** Types two texts into a box by turns; runs in the page. */
async function keysInPage({ path, texts, keys }: { path: string; texts: string[]; keys: number }) {
  const WATCHED = 420; // ms, before trials that rest half a second
  const box = document.querySelector<HTMLInputElement>(`[data-path="${path}"]`);
  if (!box) throw new Error(`no box ${path}`);
  const times: number[] = [];
  for (let key = 0; key < keys; key += 1) {
    let last = painted();
    const watching = new MutationObserver((changes) => {
      const isOfResults = changes.some(
        ({ target }) =>
          !(target instanceof Element ? target : target.parentElement)?.closest('.advice'),
      );
      if (isOfResults) last = painted();
    });
    watching.observe(document.body, {
      subtree: true,
      childList: true,
      characterData: true,
      attributes: true,
    });
    const start = performance.now();
    box.value = texts[key % texts.length] ?? '';
    box.dispatchEvent(new Event('input', { bubbles: true }));
    await new Promise((resolve) => setTimeout(resolve, WATCHED));
    watching.disconnect();
    times.push((await last) - start);
    await new Promise((resolve) => setTimeout(resolve, 1000)); // trials end
  }
  return times.slice(2);
}

async function filled(open: Open, rows: number): Promise<Page> {
  const page = await open('worksheet/');
  const buffer = Buffer.from(JSON.stringify(longSheet(rows)));
  await page
    .getByLabel('Open a file')
    .setInputFiles({ name: 'sheet.json', mimeType: 'application/json', buffer });
  await page.locator(`[data-path="readings.${rows - 1}.dial"]`).waitFor({ state: 'attached' });
  return page;
}

/** Opens one part alone. */
const openOnly = (page: Page, path: string) =>
  page.evaluate((path) => {
    const part = document.querySelector(`[data-path="${path}"]`)?.closest('section > details');
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('section > details'))
      fold.open = fold === part;
  }, path);

/** A line for each box and number of rows: median and worst, against the limit. */
export async function keyToPaint(open: Open): Promise<readonly string[]> {
  const lines: string[] = [];
  for (const rows of [12, 200] as const) {
    const page = await filled(open, rows);
    await slowDown(page);
    for (const [path, texts] of [
      ['band.thickness', ['1.01', '1.02']],
      ['readings.6.dial', ['0.375', '0.376']],
      ['target.stress', ['110', '111']],
      ['label', ['Mill', 'Mills']],
    ] as const) {
      await openOnly(page, path);
      const times = await page.evaluate(keysInPage, { path, texts: [...texts], keys: KEYS });
      lines.push(`key to paint, ${rows} readings, ${path}: ${middleAndWorst(times, LIMITS[rows])}`);
    }
    await page.close();
  }
  return lines;
}
