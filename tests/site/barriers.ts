/** What a machine can find that bars someone from a page. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { JSHandle, Page } from '@playwright/test';
import type { AxeResults, RunOptions, Spec } from 'axe-core';
import { oneOfEachLook } from './looks.ts';

/** WCAG 2.2, levels A and AA. */
export const WCAG: readonly string[] = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

const CHECKER = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const IS_WHOLE = process.env['VIEWS'] === 'all';
const MARK = 'data-one-of-its-look';
const ON_LOOKS = `[${MARK}], [${MARK}] *`;

/** What each rule is held against: all that it is about, or what is inside one element of each look. */
const ON_ALL = {
  'color-contrast': '*',
  'link-in-text-block': 'a[href], [role=link]',
  'target-size': '*',
};
/** The one that takes as long as all others together, and says the same of all words of one look. */
const CONTRAST_ON_LOOKS = { ...ON_ALL, 'color-contrast': ON_LOOKS };
/** The rules that theme and width of words can change. */
const LOOKS_ON_LOOKS = {
  'color-contrast': ON_LOOKS,
  'link-in-text-block': ['a[href]', '[role=link]']
    .map((link) => `${link}[${MARK}], [${MARK}] ${link}`)
    .join(', '),
  'target-size': ON_LOOKS,
};
type Places = typeof ON_ALL;

/** The checker as it stands on a page. */
interface AxeOnPage {
  configure(spec: Spec & { noHtml: boolean }): void;
  run(context: { include: Element[] }, options: RunOptions): Promise<AxeResults>;
}

/** Puts the checker on the page, once: it is half a megabyte to read. */
async function bring(page: Page): Promise<void> {
  if (!(await page.evaluate('"axe" in window'))) await page.evaluate(CHECKER);
}

/** Elements of a page. */
type Elements = JSHandle<readonly Element[]>;

const theWhole = (page: Page): Promise<Elements> =>
  page.evaluateHandle(() => [document.documentElement]);

/** Marks one element of each look that the page has now. */
const markLooks = async (page: Page): Promise<void> => {
  const looks = await page.evaluateHandle(oneOfEachLook);
  await looks.evaluate((elements, mark) => {
    for (const old of document.querySelectorAll(`[${mark}]`)) old.removeAttribute(mark);
    for (const element of elements) element.setAttribute(mark, '');
  }, MARK);
};

/**
 * Reads elements on their page, by some rules. One reading for all rules: each goes through the whole page first. It
 * writes down no element but those in which something is found.
 */
const found = (
  elements: Elements,
  runOnly: { readonly type: 'rule' | 'tag'; readonly values: readonly string[] },
  places: Places = ON_ALL,
): Promise<readonly string[]> =>
  elements.evaluate(
    async (include, { type, values, rules }) => {
      const { axe } = window as unknown as { axe: AxeOnPage };
      axe.configure({ noHtml: true, rules });
      const { violations } = await axe.run(
        { include: [...include] },
        {
          runOnly: { type, values: [...values] },
          resultTypes: ['violations'],
          selectors: false,
          elementRef: true,
        },
      );
      return violations.flatMap(({ id, nodes }) =>
        nodes.map(({ element }) => `${id}: ${element?.outerHTML.slice(0, 300)}`),
      );
    },
    { ...runOnly, rules: Object.entries(places).map(([id, selector]) => ({ id, selector })) },
  );

/** The page as it is shown now, by rules with any of these tags; words by one element of each look, with `VIEWS=all` all. */
export async function barriers(page: Page, tags = WCAG): Promise<readonly string[]> {
  await bring(page);
  await markLooks(page);
  const places = IS_WHOLE ? ON_ALL : CONTRAST_ON_LOOKS;
  return found(await theWhole(page), { type: 'tag', values: tags }, places);
}

/** The same for what another look alone can change. */
export async function barriersOfLooks(page: Page): Promise<readonly string[]> {
  await bring(page);
  await markLooks(page);
  const rules = { type: 'rule', values: Object.keys(LOOKS_ON_LOOKS) } as const;
  return found(await theWhole(page), rules, IS_WHOLE ? ON_ALL : LOOKS_ON_LOOKS);
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
  return found(elements, { type: 'tag', values: WCAG });
}
