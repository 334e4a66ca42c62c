/** Figures that stand alone: inside pages of other sites with strict policies of their own, and before a class. */
import { createServer, type Server } from 'node:http';
import { expect, type Page, test as testAlone } from '@playwright/test';
import { arrivals } from './arrivals.ts';
import { test } from './kept-page.ts';
import { openLive } from './open-live.ts';
import { FIGURES_ALONE } from './pages.ts';

const SCRIPT = 32_000; // bytes, gzip
const LEAST_LETTERS = 28; // px, on a projector of 1280 by 720
const HEAVIEST = ['handle-to-band/chain', 'counting-turns/pair', 'screw-takes-its-cut/ramp'];

/** A page of another origin with a strict policy of its own that holds a figure. */
function hostOf(figure: string, ours: string, scripts: string): Promise<Server> {
  const policy = `default-src 'none'; frame-src ${ours}; script-src ${scripts}`;
  const page = `<!doctype html><title>Elsewhere</title><iframe src="${figure}" title="a figure" width="100%" height="640"></iframe><script src="${ours}embed.js" async></script>`;
  const server = createServer((_, response) => {
    response.writeHead(200, { 'Content-Type': 'text/html', 'Content-Security-Policy': policy });
    response.end(page);
  });
  return new Promise((resolve) => server.listen(0, '127.0.0.1', () => resolve(server)));
}

/** Opens that page by another name of this machine, so that its origin is another one. */
async function openElsewhere(page: Page, server: Server) {
  const address = server.address();
  const port = typeof address === 'object' && address ? address.port : 0;
  await page.goto(`http://localhost:${port}/`);
  const frame = page.frameLocator('iframe');
  await expect(frame.locator('html[data-live="ready"]')).toBeAttached();
  return frame;
}

const heightOf = (page: Page) =>
  page.locator('iframe').evaluate((frame: HTMLIFrameElement) => Number(frame.height));

test('inside a page of another origin a figure answers, and is as high as it needs', async ({
  page,
  baseURL,
}) => {
  const ours = `${baseURL}`;
  const server = await hostOf(`${ours}embed/stiff-spring/strip/`, ours, ours);
  const frame = await openElsewhere(page, server);
  const finding = frame.locator('.finding').filter({ visible: true });
  const before = await finding.textContent();
  await frame.locator('.live-input input[type="range"]').first().press('PageUp');
  await expect(finding).not.toHaveText(`${before}`);
  await expect.poll(() => heightOf(page)).not.toBe(640);
  const needed = await frame.locator('html').evaluate((root) => (root as HTMLElement).offsetHeight);
  await expect.poll(() => heightOf(page)).toBe(needed);
  const [popup] = await Promise.all([
    page.waitForEvent('popup'),
    frame.locator('[data-onward]').click(),
  ]);
  expect(popup.url()).toMatch(/lessons\/stiff-spring\/#v=1&stretch=/);
  server.close();
});

test('where the other page takes no script of ours, the figure answers at the height it was given', async ({
  page,
  baseURL,
}) => {
  const ours = `${baseURL}`;
  const server = await hostOf(`${ours}embed/stiff-spring/strip/#v=1&stretch=x`, ours, "'none'");
  const frame = await openElsewhere(page, server);
  await expect(frame.locator('[data-link-refused]')).toHaveText(
    'Part of the link could not be used and was left out: stretch=x.',
  );
  await expect(frame.locator('.finding').filter({ visible: true })).toContainText('0.100');
  expect(await heightOf(page)).toBe(640);
  server.close();
});

for (const figure of HEAVIEST)
  testAlone(`${figure} alone starts with at most ${SCRIPT} bytes of script`, async ({ page }) => {
    const { script } = await arrivals(page, () => openLive(page, `./embed/${figure}/`));
    expect(script).toBeGreaterThan(10_000);
    expect(script).toBeLessThanOrEqual(SCRIPT);
  });

/** The least size of the letters that are seen, px; runs in the page. */
function leastLetters(): number {
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const sizes: number[] = [];
  while (walker.nextNode()) {
    const parent = walker.currentNode.parentElement;
    const isSeen =
      parent && parent.getClientRects().length > 0 && !parent.closest('.visually-hidden');
    if (!isSeen || walker.currentNode.textContent?.trim() === '') continue;
    const matrix = parent instanceof SVGGraphicsElement ? parent.getScreenCTM() : null;
    const size = Number.parseFloat(getComputedStyle(parent).fontSize);
    const isRaised = parent.closest('sub, sup, [baseline-shift], tspan[dy]') !== null;
    if (!isRaised) sizes.push(size * (matrix ? Math.hypot(matrix.a, matrix.b) : 1));
  }
  return Math.min(...sizes);
}

/** What the words that tell of the key for the notes lie on: of the drawing, the finding, the controls, the foot. */
function underNotesKey(): readonly string[] {
  const key = document.querySelector('.notes-key')?.getBoundingClientRect();
  if (!key) return ['no key'];
  const finding = document.createRange();
  const findings = [...document.querySelectorAll('.finding')];
  const seen = findings.find((each) => each.getClientRects().length > 0);
  finding.selectNodeContents(seen ?? document.body);
  const pieces = [...document.querySelectorAll('.drawing svg *, .play-controls, .embed-foot *')];
  const boxes = [finding, ...pieces].map((piece) => ({
    of: piece instanceof Element ? piece.tagName : 'finding',
    box: piece.getBoundingClientRect(),
  }));
  const isUnder = ({ width, left, right, top, bottom }: DOMRect) =>
    width > 0 && left < key.right && right > key.left && top < key.bottom && bottom > key.top;
  return boxes.filter(({ box }) => isUnder(box)).map(({ of }) => of);
}

test('before a class every letter of every figure is large, nothing runs off sideways, and the keyboard works it', async ({
  page,
}) => {
  test.setTimeout(180_000);
  await page.setViewportSize({ width: 1280, height: 720 });
  for (const address of FIGURES_ALONE) {
    await openLive(page, `${address}?projector`);
    expect(await page.evaluate(leastLetters), address).toBeGreaterThanOrEqual(LEAST_LETTERS - 0.1);
    const { scrollWidth, clientWidth } = await page
      .locator('html')
      .evaluate(({ scrollWidth, clientWidth }) => ({ scrollWidth, clientWidth }));
    expect(scrollWidth, address).toBeLessThanOrEqual(clientWidth);
    const notes = page.locator('.title-block').filter({ visible: true });
    await expect(page.locator('.notes-key'), address).toBeInViewport({ ratio: 1 });
    await expect(notes, address).toHaveCount(0);
    expect(await page.evaluate(underNotesKey), address).toEqual([]);
    await page.keyboard.press('n');
    await expect(notes, address).toHaveCount(1);
    await expect(notes, address).toBeInViewport({ ratio: 1 });
    expect(await page.evaluate(leastLetters), address).toBeGreaterThanOrEqual(LEAST_LETTERS - 0.1);
    await page.keyboard.press('n');
    await page.keyboard.press('Tab');
    const inFigure = await page.evaluate(
      () => document.activeElement?.closest('live-figure') !== null,
    );
    expect(inFigure, `${address}: the first tab`).toBe(true);
  }
});
