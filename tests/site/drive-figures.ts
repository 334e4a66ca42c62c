/** Pushes the inputs of live figures into every corner by their own controls, as a reader could, and measures each drawing. */
import { expect, type Locator, type Page } from '@playwright/test';
import { collisionsIn } from './collisions.ts';
import { type Measured, measureDrawings } from './measure-drawings.ts';

/** What was seen in a drawing, and where the inputs stood. */
export interface Corner<Seen> {
  readonly where: string;
  readonly seen: Seen;
}

/** Shows the page on a phone or wide, in one of the unit systems. */
export async function view(page: Page, width: number, system: 'metric' | 'us'): Promise<void> {
  await page.setViewportSize({ width, height: 900 });
  await page.locator(`#units-${system}`).check({ force: true });
}

/** Commits the least or the most that the page's guess can be set to. */
export async function guess(page: Page, end: 'min' | 'max'): Promise<void> {
  await page.locator('guess-first').evaluate(async (element, which) => {
    const slider = element.querySelector<HTMLInputElement>('[type="range"]');
    if (!slider) throw new Error('a guess has a slider');
    slider.value = slider[which];
    slider.dispatchEvent(new Event('input', { bubbles: true }));
    element.querySelector('button')?.click(); // the first time its script has to come
    await customElements.whenDefined('guess-first');
    await new Promise((resolve) => setTimeout(resolve));
  }, end);
}

/** Puts every input of the page back to where it stood at first. */
export const atRest = (page: Page): Promise<void> =>
  page.locator('share-link form').evaluate(async (form: HTMLFormElement) => {
    form.requestSubmit(); // the first time its script has to come
    await customElements.whenDefined('share-link');
    await new Promise((resolve) => setTimeout(resolve));
  });

/** A control of the page: the ways it can be moved, and back to where it stood. */
interface Control {
  readonly moves: readonly (() => void)[];
  readonly back: () => void;
}

/** The page's controls that can be seen, choices or sliders. Runs in the page, where nothing but itself is there. */
function controlsOfPage(what: 'choices' | 'sliders'): readonly Control[] {
  const seen = <Found extends Element>(selector: string) =>
    [...document.querySelectorAll<Found>(selector)].filter(
      (control) => control.getClientRects().length > 0,
    );
  const slide = (slider: HTMLInputElement, to: string) => () => {
    slider.value = to;
    slider.dispatchEvent(new Event('input', { bubbles: true }));
  };
  if (what === 'sliders')
    return seen<HTMLInputElement>('live-input [type="range"]').map((slider) => ({
      moves: [slide(slider, slider.min), slide(slider, slider.max)],
      back: slide(slider, slider.value),
    }));
  return seen('live-input fieldset').map((choice) => {
    const radios = [...choice.querySelectorAll('input')];
    const start = radios.find(({ checked }) => checked);
    return { moves: radios.map((radio) => () => radio.click()), back: () => start?.click() };
  });
}

/** Goes through the corners of what shows in a figure and looks at each drawing. Runs in the page. */
function drive<Seen>(
  figure: Element,
  look: (drawing: Measured) => readonly Seen[],
  measure: typeof measureDrawings,
  controls: typeof controlsOfPage,
): readonly Corner<Seen>[] {
  const drawn = () =>
    [...figure.querySelectorAll('svg')]
      .filter((svg) => svg.checkVisibility()) // without laying the page out
      .map(({ innerHTML }) => innerHTML)
      .join();
  const shows = ({ moves, back }: Control) => {
    const before = drawn();
    const changes = moves.some((move) => {
      move();
      return drawn() !== before;
    });
    back();
    return changes;
  };
  /** Goes through all combinations of the moves of some controls, one of each. */
  const combine = ([first, ...rest]: readonly Control[], then: () => void): void => {
    if (!first) then();
    for (const move of first?.moves ?? []) {
      move();
      combine(rest, then);
    }
  };
  const where = () =>
    [...document.querySelectorAll<HTMLInputElement>('live-input :is([type="text"], :checked)')]
      .filter((box) => box.getClientRects().length > 0)
      .map(({ id, name, value }) => `${(id || name).replace(/^(input|choice)-/, '')} ${value}`)
      .join(', ');
  const corners: Corner<Seen>[] = [];
  combine(controls('choices').filter(shows), () =>
    combine(controls('sliders').filter(shows), () => {
      for (const seen of measure(figure).flatMap(look)) corners.push({ where: where(), seen });
    }),
  );
  return corners;
}

/** Opens the folds around a figure, and waits until it has come into view and is drawn in the variant that is shown. */
export async function bringIntoView(figure: Locator): Promise<void> {
  await figure.evaluate((element) => {
    for (
      let fold = element.closest('details');
      fold;
      fold = fold.parentElement?.closest('details') ?? null
    )
      fold.open = true;
  });
  await figure.scrollIntoViewIfNeeded();
  await expect(figure).toHaveAttribute('data-said', /./);
  await figure.evaluate(
    () => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))),
  );
}

/** What a function, which runs in the page, sees in every corner: each option of each choice with both ends of each slider. */
async function seenInCorners<Seen>(
  figure: Locator,
  look: (drawing: Measured) => readonly Seen[],
): Promise<readonly Corner<Seen>[]> {
  await bringIntoView(figure);
  type InPage = [typeof drive<Seen>, typeof look, typeof measureDrawings, typeof controlsOfPage];
  const source = `[${drive}, ${look}, ${measureDrawings}, ${controlsOfPage}]`;
  const inPage = await figure.page().evaluateHandle<InPage>(source);
  return figure.evaluate((element, [go, ...parts]) => go(element, ...parts), inPage);
}

/** The drawing in every corner of the inputs that show in a figure. */
export const cornersOfFigure = (figure: Locator): Promise<readonly Corner<Measured>[]> =>
  seenInCorners(figure, (drawing) => [drawing]);

/** What collides in any corner. It is found in the page: of thousands of drawings hardly one has to leave it. */
export const collisionsOfFigure = (figure: Locator): Promise<readonly Corner<string>[]> =>
  seenInCorners(figure, collisionsIn);
