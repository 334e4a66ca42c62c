/**
 * All collisions in the figures of a lesson: in every corner, on a phone and wide, in both unit systems, with and without
 * a guess. Of these views those that crowd a drawing most, and of each kind one; `VIEWS=all` goes through all of them.
 */
import type { Locator, Page } from '@playwright/test';
import { collisionsIn } from './collisions.ts';
import { atRest, bringIntoView, cornersOfFigure, guess, view } from './drive-figures.ts';
import { measureDrawings } from './measure-drawings.ts';
import { openLive } from './open-live.ts';

const WIDTHS = [390, 1200];

interface View {
  readonly width: number;
  readonly system: 'metric' | 'us';
}

const EVERY_VIEW: readonly View[] = WIDTHS.flatMap((width) => [
  { width, system: 'metric' },
  { width, system: 'us' },
]);
const views = (...some: readonly View[]) => (process.env['VIEWS'] === 'all' ? EVERY_VIEW : some);

/** With a guess all corners are gone through again, at each of its ends. */
const ROUNDS = [
  {
    end: undefined,
    seen: views(
      { width: 390, system: 'metric' },
      { width: 390, system: 'us' },
      { width: 1200, system: 'us' },
    ),
  },
  { end: 'min', seen: views({ width: 390, system: 'us' }) },
  { end: 'max', seen: views({ width: 1200, system: 'metric' }) },
] as const;

/** Whether a guess shows in a figure: then it is named there. */
async function showsGuess(figure: Locator): Promise<boolean> {
  await bringIntoView(figure);
  const drawings = await figure.evaluate(measureDrawings);
  return drawings.some(({ words }) => words.some(({ text }) => /\bguess\b/.test(text)));
}

async function figureCollisions(figure: Locator, said: string): Promise<readonly string[]> {
  const name = await figure.getAttribute('data-figure');
  return (await cornersOfFigure(figure)).flatMap(({ where, drawing }) =>
    collisionsIn(drawing).map((collision) => `${name}, ${said} (${where}): ${collision}`),
  );
}

/** The figures of a page in which a guess shows, at either width. */
async function guessedFigures(page: Page): Promise<readonly Locator[]> {
  const guessed = new Set<Locator>();
  const all = await page.locator('live-figure').all();
  await atRest(page);
  for (const width of WIDTHS) {
    await view(page, width, 'metric');
    for (const figure of all) if (await showsGuess(figure)) guessed.add(figure);
  }
  return [...guessed];
}

/** Every collision with its figure, the view and where the inputs stood. */
export async function lessonCollisions(page: Page, address: string): Promise<readonly string[]> {
  await openLive(page, address);
  const found: string[] = [];
  let figures: readonly Locator[] = await page.locator('live-figure').all();
  for (const { end, seen } of ROUNDS) {
    if (end) await guess(page, end);
    if (end) figures = await guessedFigures(page);
    for (const { width, system } of seen) {
      await view(page, width, system);
      for (const figure of figures) {
        await atRest(page); // or one figure stands where another was driven to
        const said = `${width} px, ${system}, ${end ? `guess at its ${end}` : 'no guess'}`;
        found.push(...(await figureCollisions(figure, said)));
      }
    }
  }
  return found;
}
