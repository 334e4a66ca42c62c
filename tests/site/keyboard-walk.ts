/** Going through a page with the Tab key alone. */
import type { Page } from '@playwright/test';

const HANDS = 'a[href], button, input, select, textarea, summary, [tabindex="0"]';

/**
 * Names what the Tab key should reach, each in its `data-stop`: one stop for a group of radio buttons, none
 * inside a closed disclosure.
 */
const nameStops = (page: Page): Promise<readonly string[]> =>
  page.evaluate((hands) => {
    const names = new Set<string>();
    for (const [place, element] of document.querySelectorAll<HTMLElement>(hands).entries()) {
      if (!element.checkVisibility({ visibilityProperty: true })) continue;
      if (element.matches(':disabled')) continue;
      const isChoice = element instanceof HTMLInputElement && element.type === 'radio';
      const name = isChoice ? `choice ${element.name}` : `${place} ${element.outerHTML}`;
      element.dataset['stop'] = name.slice(0, 160);
      names.add(element.dataset['stop']);
    }
    return [...names];
  }, HANDS);

/** A stop of the Tab key, and whether it can be seen that the focus is there. */
interface Stop {
  readonly name: string;
  readonly isMarked: boolean;
}

/** Begins to write down where the focus goes, with what shows it there. Runs in the page. */
function watchFocus(): void {
  const stops: Stop[] = [];
  Object.assign(window, { stops });
  addEventListener('focusin', ({ target }) => {
    const element = target as HTMLElement;
    const marks = [element, element.nextElementSibling, element.firstElementChild];
    const isMarked = marks.some((mark) => {
      if (!mark) return false;
      const { outlineStyle, strokeWidth, stroke } = getComputedStyle(mark);
      return outlineStyle !== 'none' || (stroke !== 'none' && strokeWidth === '3px');
    });
    stops.push({ name: element.dataset['stop'] ?? `unforeseen ${element.outerHTML}`, isMarked });
  });
}

/** Holds the Tab key down for so many steps, and gives where the focus went. */
async function walk(page: Page, steps: number): Promise<readonly Stop[]> {
  await page.evaluate(watchFocus);
  for (let step = 0; step < steps; step += 1) await page.keyboard.down('Tab');
  await page.keyboard.up('Tab');
  return page.evaluate(() => (window as unknown as { stops: readonly Stop[] }).stops);
}

/** What the Tab key does not reach though it should, and where it goes without a mark that shows it. */
export async function lostByKeyboard(page: Page): Promise<readonly string[]> {
  const stops = await nameStops(page);
  const went = await walk(page, stops.length + 1);
  const reached = new Set(went.map(({ name }) => name));
  const unmarked = went.filter(({ isMarked }) => !isMarked);
  return [
    ...stops.filter((stop) => !reached.has(stop)).map((stop) => `not reached: ${stop}`),
    ...unmarked.map(({ name }) => `no mark: ${name}`),
  ];
}
