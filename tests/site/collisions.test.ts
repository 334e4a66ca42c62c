/** The search for collisions finds what is pushed over something else, and nothing where a drawing is clean. */
import { expect, type Page } from '@playwright/test';
import { collisionsIn } from './collisions.ts';
import { collisionsOfFigure, cornersOfFigure, view } from './drive-figures.ts';
import { test } from './kept-page.ts';
import type { Measured } from './measure-drawings.ts';
import { measureDrawings } from './measure-drawings.ts';
import { openLive } from './open-live.ts';

const LESSON = './lessons/stiff-spring/';

const SHEET = `
  <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 100" width="200" height="100"
    font-size="10" font-family="monospace">
    <text id="first" x="20" y="20">first</text>
    <text x="20" y="40">second<tspan x="120" y="40">third</tspan></text>
    <path class="steel-line" d="M10 90L60 60" stroke="red" fill="none"/>
    <path class="axis" d="M10 17H190" stroke="grey" fill="none"/>
    <g class="handle" transform="translate(150 80)"><rect class="grip" x="-9" y="-9" width="18" height="18"/></g>
  </svg>`;

/** Writes a clean sheet with its first words at another place, and gives what collides. */
async function collisionsWith(page: Page, x: number, y: number): Promise<readonly string[]> {
  await page.setContent(SHEET);
  const moved = { x: String(x), y: String(y) };
  await page.locator('#first').evaluate((text, { x, y }) => {
    text.setAttribute('x', x);
    text.setAttribute('y', y);
  }, moved);
  const sheets = await page.locator('body').evaluate(measureDrawings);
  expect(sheets).toHaveLength(1);
  return sheets.flatMap(collisionsIn);
}

for (const [what, x, y, found] of [
  ['nothing on a clean sheet, where words stand on an axis', 20, 20, []],
  ['a label that is pushed over another', 30, 42, ['“first” and “second”']],
  ['a label over a piece of text with a place of its own', 110, 40, ['“first” and “third”']],
  ['a label that runs off the sheet', 180, 20, ['“first” leaves the sheet']],
  ['a label above the sheet', 20, 3, ['“first” leaves the sheet']],
  ['a label on a line of data', 25, 82, ['“first” and a steel-line']],
  ['a label under a grip', 135, 82, ['“first” and a grip']],
] as const) {
  test(`finds ${what}`, async ({ page }) => {
    expect(await collisionsWith(page, x, y)).toEqual(found);
  });
}

test('lets labels touch, by a pixel at most', () => {
  const word = (text: string, left: number) => ({
    text,
    left,
    right: left + 30,
    top: 0,
    bottom: 8,
  });
  const sheet = { left: 0, top: 0, right: 100, bottom: 100 };
  const drawing = (apart: number): Measured => ({
    sheet,
    words: [word('one', 10), word('two', 10 + apart)],
    grips: [],
    strokes: [],
  });
  expect(collisionsIn(drawing(29))).toEqual([]);
  expect(collisionsIn(drawing(28.9))).toEqual(['“one” and “two”']);
});

test('goes through every corner of a figure, by its own controls', async ({ page }) => {
  await openLive(page, LESSON);
  await view(page, 390, 'us');
  const corners = await cornersOfFigure(page.locator('live-figure').first());
  // The stretch and the gauge length to both ends, held and let go.
  expect(corners).toHaveLength(8);
  expect(new Set(corners.map(({ where }) => where)).size).toBe(8);
  for (const { seen } of corners) expect(seen.words.length).toBeGreaterThan(3);
  const findings = corners.map(({ seen }) => seen.words.map(({ text }) => text).join());
  expect(new Set(findings).size).toBeGreaterThan(4);
});

test('finds in a figure what collides in one of its corners, and where', async ({ page }) => {
  await openLive(page, LESSON);
  await view(page, 390, 'us');
  const figure = page.locator('live-figure').first();
  expect(await collisionsOfFigure(figure)).toEqual([]);
  await page.evaluate(() => {
    const large = new CSSStyleSheet();
    large.replaceSync('live-figure svg text { font-size: 40px }');
    document.adoptedStyleSheets.push(large);
  });
  const corners = await cornersOfFigure(figure);
  const found = await collisionsOfFigure(figure);
  expect(found.length).toBeGreaterThan(0);
  expect(found).toEqual(
    corners.flatMap(({ where, seen }) => collisionsIn(seen).map((one) => ({ where, seen: one }))),
  );
});
