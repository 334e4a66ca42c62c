/**
 * All collisions in the figures of a lesson: in every corner, on a phone and wide, in both unit systems, with and without
 * a guess. Of these views those that crowd a drawing most, and of each kind one; `VIEWS=all` goes through all of them.
 */
import type { Locator, Page } from '@playwright/test';
import { collisionsIn } from './collisions.ts';
import { atRest, bringIntoView, collisionsOfFigure, guess, view } from './drive-figures.ts';
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

/** With a guess all corners are gone through again, at each of its ends, and every figure is seen at rest in metric units. */
const ROUNDS = [
  {
    end: undefined,
    seen: views({ width: 390, system: 'us' }, { width: 1200, system: 'metric' }),
  },
  { end: 'min', seen: views({ width: 390, system: 'metric' }) },
  { end: 'max', seen: views({ width: 1200, system: 'us' }) },
] as const;

async function figureCollisions(figure: Locator, said: string): Promise<readonly string[]> {
  const name = await figure.getAttribute('data-figure');
  return (await collisionsOfFigure(figure)).map(
    ({ where, seen }) => `${name}, ${said} (${where}): ${seen}`,
  );
}

/** A figure as it stands: whether a guess is named there, and what collides. */
async function atFirstSight(figure: Locator) {
  await bringIntoView(figure);
  const drawings = await figure.evaluate(measureDrawings);
  const texts = drawings.flatMap(({ words }) => words.map(({ text }) => text));
  const isGuessed = texts.some((text) => /\bguess\b/.test(text));
  return { isGuessed, collisions: drawings.flatMap(collisionsIn) };
}

/** All figures at rest, with a guess, in metric units and at either width: those in which it shows, and what collides. */
async function withGuess(page: Page) {
  const guessed = new Set<Locator>();
  const found: string[] = [];
  const all = await page.locator('live-figure').all();
  await atRest(page);
  for (const width of WIDTHS) {
    await view(page, width, 'metric');
    for (const figure of all) {
      const { isGuessed, collisions } = await atFirstSight(figure);
      if (isGuessed) guessed.add(figure);
      const name = await figure.getAttribute('data-figure');
      found.push(...collisions.map((collision) => `${name}, ${width} px, at rest: ${collision}`));
    }
  }
  return { guessed: [...guessed], found };
}

/** Every collision with its figure, the view and where the inputs stood. */
export async function lessonCollisions(page: Page, address: string): Promise<readonly string[]> {
  await openLive(page, address);
  const found: string[] = [];
  let figures: readonly Locator[] = await page.locator('live-figure').all();
  for (const { end, seen } of ROUNDS) {
    if (end) {
      await guess(page, end);
      const seenFirst = await withGuess(page);
      figures = seenFirst.guessed;
      found.push(...seenFirst.found);
    }
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
