/** Pushes the inputs of live figures into every corner by their own controls, as a reader could, and measures each drawing. */
import { expect, type Locator, type Page } from '@playwright/test';
import { type Measured, measureDrawings } from './measure-drawings.ts';

/** A drawing, and where the inputs stood. */
export interface Corner {
  readonly where: string;
  readonly drawing: Measured;
}

/** Shows the page on a phone or wide, in one of the unit systems. */
export async function view(page: Page, width: number, system: 'metric' | 'us'): Promise<void> {
  await page.setViewportSize({ width, height: 900 });
  await page.locator(`#units-${system}`).check({ force: true });
}

/** Commits the least or the most that the page's guess can be set to. */
export async function guess(page: Page, end: 'min' | 'max'): Promise<void> {
  await page.locator('guess-first').evaluate((element, which) => {
    const slider = element.querySelector<HTMLInputElement>('[type="range"]');
    if (!slider) throw new Error('a guess has a slider');
    slider.value = slider[which];
    slider.dispatchEvent(new Event('input', { bubbles: true }));
    element.querySelector('button')?.click();
  }, end);
}

/** Goes through the corners and measures each. Runs in the page, where nothing of this file but itself is there. */
function drive(figure: Element, measure: typeof measureDrawings): readonly Corner[] {
  const controls = <Found extends Element>(selector: string) =>
    [...figure.querySelectorAll<Found>(selector)].filter((one) => one.getClientRects().length > 0);
  const slide = (slider: HTMLInputElement, end: 'min' | 'max') => () => {
    slider.value = slider[end];
    slider.dispatchEvent(new Event('input', { bubbles: true }));
  };
  /** Goes through all combinations of some moves, one of each list. */
  const combine = (moves: readonly (readonly (() => void)[])[], then: () => void): void => {
    const [first, ...rest] = moves;
    if (!first) then();
    for (const move of first ?? []) {
      move();
      combine(rest, then);
    }
  };
  const where = () =>
    controls<HTMLInputElement>('.twins [type="text"], fieldset :checked')
      .map(({ id, name, value }) => `${(id || name).replace(/^(input|choice)-/, '')} ${value}`)
      .join(', ');
  const corners: Corner[] = [];
  const look = () => {
    for (const drawing of measure(figure)) corners.push({ where: where(), drawing });
  };
  const choices = controls('fieldset').map((choice) =>
    [...choice.querySelectorAll('input')].map((radio) => () => radio.click()),
  );
  combine(choices, () => {
    const sliders = controls<HTMLInputElement>('[type="range"]'); // some are there for one choice alone
    combine(
      sliders.map((slider) => [slide(slider, 'min'), slide(slider, 'max')]),
      look,
    );
  });
  return corners;
}

/** Waits until a figure has come into view and is drawn in the variant that is shown. */
export async function bringIntoView(figure: Locator): Promise<void> {
  await figure.scrollIntoViewIfNeeded();
  await expect(figure).toHaveAttribute('data-said', /./);
  await figure.evaluate(
    () => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))),
  );
}

/** Every corner of a figure's own inputs: each option of each choice with both ends of each slider. */
export async function cornersOfFigure(figure: Locator): Promise<readonly Corner[]> {
  await bringIntoView(figure);
  const source = `[${drive}, ${measureDrawings}]`;
  return figure.evaluate(
    (element, [go, measure]) => go(element, measure),
    await figure.page().evaluateHandle<[typeof drive, typeof measureDrawings]>(source),
  );
}
