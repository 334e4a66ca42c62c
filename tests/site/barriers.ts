/** What a machine can find that bars someone from a page. */
import type { JSHandle, Page } from '@playwright/test';
import axe, { type AxeResults, type RunOptions } from 'axe-core';
import { oneOfEachLook } from './looks.ts';

/** WCAG 2.2, levels A and AA. */
export const WCAG: readonly string[] = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** The rules that theme and width of words can change. */
const LOOKS = ['color-contrast', 'link-in-text-block', 'target-size'];
/** The one that takes as long as all others together, and says the same of all words of one look. */
const CONTRAST = 'color-contrast';
const IS_WHOLE = process.env['VIEWS'] === 'all';

/** The checker as it stands on a page. */
interface AxeOnPage {
  run(context: { include: Element[] }, options: RunOptions): Promise<AxeResults>;
}

/** Puts the checker on the page, once: it is half a megabyte to read. */
async function bring(page: Page): Promise<void> {
  if (!(await page.evaluate('"axe" in window'))) await page.evaluate(axe.source);
}

/** Elements of a page. */
type Elements = JSHandle<readonly Element[]>;

const theWhole = (page: Page): Promise<Elements> =>
  page.evaluateHandle(() => [document.documentElement]);

/** Reads elements on their page, by some rules. */
const found = (elements: Elements, options: RunOptions): Promise<readonly string[]> =>
  elements.evaluate(
    async (include, how) => {
      const { violations } = await (window as unknown as { axe: AxeOnPage }).axe.run(
        { include: [...include] },
        how,
      );
      return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html}`));
    },
    { ...options, resultTypes: ['violations'] satisfies RunOptions['resultTypes'] },
  );

/** What rules find on one element of each look that the page has now; with `VIEWS=all` on every one. */
async function onLooks(page: Page, rules: readonly string[]): Promise<readonly string[]> {
  const elements = await (IS_WHOLE ? theWhole(page) : page.evaluateHandle(oneOfEachLook));
  return found(elements, { runOnly: { type: 'rule', values: [...rules] } });
}

/** The page as it is shown now, by rules with any of these tags. */
export async function barriers(page: Page, tags = WCAG): Promise<readonly string[]> {
  await bring(page);
  const others = await found(await theWhole(page), {
    runOnly: { type: 'tag', values: [...tags] },
    rules: { [CONTRAST]: { enabled: false } },
  });
  return [...others, ...(await onLooks(page, [CONTRAST]))];
}

/** The same for what another look alone can change. */
export async function barriersOfLooks(page: Page): Promise<readonly string[]> {
  await bring(page);
  return onLooks(page, LOOKS);
}

/** All of it in a part of the page. @throws where nothing fits the selector */
export async function barriersWithin(page: Page, part: string): Promise<readonly string[]> {
  await bring(page);
  const elements = await page.evaluateHandle(
    (selector) => [...document.querySelectorAll(selector)],
    part,
  );
  if (await elements.evaluate(({ length }) => length === 0))
    throw new Error(`nothing on the page fits ${part}`);
  return found(elements, { runOnly: { type: 'tag', values: [...WCAG] } });
}
