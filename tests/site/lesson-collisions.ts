/** All collisions in the figures of a lesson: in every corner, on a phone and wide, in both unit systems, with and without a guess. */
import type { Locator, Page } from '@playwright/test';
import { collisionsIn } from './collisions.ts';
import { bringIntoView, cornersOfFigure, guess, view } from './drive-figures.ts';
import { measureDrawings } from './measure-drawings.ts';
import { openLive } from './open-live.ts';

const VIEWS = [390, 1200].flatMap((width) =>
  (['metric', 'us'] as const).map((system) => ({ width, system })),
);

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

/** Every collision with its figure, the view and where the inputs stood. */
export async function lessonCollisions(page: Page, address: string): Promise<readonly string[]> {
  await openLive(page, address);
  const found: string[] = [];
  for (const end of [undefined, 'min', 'max'] as const) {
    if (end) await guess(page, end);
    for (const { width, system } of VIEWS) {
      await view(page, width, system);
      for (const figure of await page.locator('live-figure').all()) {
        await page.locator('[data-action="reset"]').click(); // or one figure stands where another was driven to
        if (end && !(await showsGuess(figure))) continue;
        const said = `${width} px, ${system}, ${end ? `guess at its ${end}` : 'no guess'}`;
        found.push(...(await figureCollisions(figure, said)));
      }
    }
  }
  return found;
}
