/** The search for barriers finds what bars someone, on one element of a look as on another, and nothing on a clean page. */
import { expect, type Page } from '@playwright/test';
import { barriers, barriersOfLooks, barriersWithin } from './barriers.ts';
import { test } from './kept-page.ts';

const CLEAN = `<!doctype html><html lang="en"><title>Clean</title><main><h1>Clean</h1>
  <p>Words in black on white, with <a href="#part">a link</a> among them.</p>
  <p id="part" class="part">More words.</p><p><button>Press</button></p></main></html>`;

/** The clean page with some of it replaced. */
const pageWith = (page: Page, what: string, by: string) => page.setContent(CLEAN.replace(what, by));

const ids = (found: readonly string[]) => found.map((each) => each.replace(/: .*/s, ''));

test('finds nothing on a clean page', async ({ page }) => {
  await page.setContent(CLEAN);
  expect(await barriers(page)).toEqual([]);
  expect(await barriersOfLooks(page)).toEqual([]);
  expect(await barriersWithin(page, '#part')).toEqual([]);
});

const PALE = 'style="color: #bbb; background: #fff"';
const SMALL = 'style="font-size: 8px; padding: 0; border: 0; height: 8px; width: 8px"';

for (const [what, from, to, rule, ofLooks] of [
  ['pale words', '<p id="part"', `<p ${PALE} id="part"`, 'color-contrast', true],
  ['pale words inside others', 'More', `<b ${PALE}>More</b>`, 'color-contrast', true],
  [
    'a link known by its color alone',
    'href="#part"',
    'href="#part" style="color: #333; text-decoration: none"',
    'link-in-text-block',
    true,
  ],
  [
    'buttons too small and close for a thumb',
    '<button>Press</button>',
    `<button ${SMALL}>P</button><button ${SMALL}>Q</button>`,
    'target-size',
    true,
  ],
  ['a button without a name', 'Press', '', 'button-name', false],
  ['a page without a language', ' lang="en"', '', 'html-has-lang', false],
] as const) {
  test(`finds ${what}`, async ({ page }) => {
    await pageWith(page, from, to);
    expect(ids(await barriers(page))).toContain(rule);
    expect(ids(await barriersOfLooks(page)).includes(rule)).toBe(ofLooks);
  });
}

test('finds a look that came after the first reading, and names the element', async ({ page }) => {
  await page.setContent(CLEAN);
  expect(await barriers(page)).toEqual([]);
  await page.locator('.part').evaluate((part) => part.setAttribute('style', 'color: #bbb'));
  expect(await barriersOfLooks(page)).toEqual([
    expect.stringMatching(/^color-contrast: <p id="part"/),
  ]);
  expect(ids(await barriers(page))).toEqual(['color-contrast']);
  expect(ids(await barriersWithin(page, '#part'))).toEqual(['color-contrast']);
  await expect(barriersWithin(page, '#nowhere')).rejects.toThrow('nothing on the page fits');
});
