/** What every built page owes: a name, a language, one heading, a strict policy and nothing that breaks it. */
import { describe, expect, it } from 'vitest';
import { type BuiltSite, SITES } from './built-site.ts';
import { attribute, has, type Page, readPage, type Tag, wordsOf } from './html.ts';

const metaOf = ({ tags }: Page, key: string, value: string): string => {
  const meta = tags.find(
    (tag) => tag.tagName === 'meta' && attribute(tag, key).toLowerCase() === value,
  );
  return attribute(meta, 'content').trim();
};

const titleOf = ({ tags }: Page): string =>
  wordsOf(tags.find((tag) => tag.tagName === 'title')?.childNodes[0]).trim();

const langOf = ({ tags }: Page): string =>
  attribute(
    tags.find((tag) => tag.tagName === 'html'),
    'lang',
  );
const countOf = ({ tags }: Page, name: string): number =>
  tags.filter((tag) => tag.tagName === name).length;

/** A script that runs but has no file of its own; data in a script tag does not run. */
const isInlineScript = (tag: Tag): boolean =>
  tag.tagName === 'script' &&
  !has(tag, 'src') &&
  /^(module|text\/javascript|)$/.test(attribute(tag, 'type'));

const isHandler = (tag: Tag): boolean =>
  tag.attrs.some(({ name, value }) => /^on/.test(name) || /^\s*javascript:/i.test(value));

const breaksPolicy = (tag: Tag): boolean =>
  tag.tagName === 'style' || has(tag, 'style') || isInlineScript(tag) || isHandler(tag);

function weaknessOf(page: Page): string | undefined {
  const policy = metaOf(page, 'http-equiv', 'content-security-policy');
  if (!/\b(default-src 'none'|default-src 'self')/.test(policy)) return 'has no policy';
  if (/unsafe|https?:|\*/.test(policy)) return `has a weak policy: ${policy}`;
  return undefined;
}

const pagesThat = (site: BuiltSite, fails: (page: Page) => unknown): readonly string[] =>
  [...site.pages].filter(([, page]) => fails(page)).map(([file]) => file);

const repeated = (texts: readonly string[]): readonly string[] =>
  texts.filter((text, index) => texts.indexOf(text) !== index);

describe.each(SITES)('each page at $base', (site) => {
  const pages = [...site.pages.values()];

  it('exists, the one for a wrong address too', () => {
    expect(pages.length).toBeGreaterThan(1);
    expect(site.files).toContain('404.html');
  });

  it('has a title of its own', () => {
    expect(pagesThat(site, (page) => titleOf(page) === '')).toEqual([]);
    expect(repeated(pages.map(titleOf))).toEqual([]);
  });

  it('has a description of its own', () => {
    const descriptions = pages.map((page) => metaOf(page, 'name', 'description'));
    expect(pagesThat(site, (page) => metaOf(page, 'name', 'description') === '')).toEqual([]);
    expect(repeated(descriptions)).toEqual([]);
  });

  it('names its language', () =>
    expect(pagesThat(site, (page) => langOf(page) !== 'en')).toEqual([]));

  it('fits a phone', () =>
    expect(
      pagesThat(site, (page) => !metaOf(page, 'name', 'viewport').includes('width=device-width')),
    ).toEqual([]));

  it('has one first heading and one main part', () => {
    expect(pagesThat(site, (page) => countOf(page, 'h1') !== 1)).toEqual([]);
    expect(pagesThat(site, (page) => countOf(page, 'main') !== 1)).toEqual([]);
  });

  it('has each id once', () => {
    const ids = ({ tags }: Page): readonly string[] =>
      tags.filter((tag) => has(tag, 'id')).map((tag) => attribute(tag, 'id'));
    expect(
      [...site.pages].flatMap(([file, page]) => repeated(ids(page)).map((id) => `${file}: ${id}`)),
    ).toEqual([]);
  });

  it('carries a strict policy', () =>
    expect(
      [...site.pages].flatMap(([file, page]) => {
        const weakness = weaknessOf(page);
        return weakness ? [`${file} ${weakness}`] : [];
      }),
    ).toEqual([]));

  it('keeps to its policy: no style, script or handler inside the page', () =>
    expect(pagesThat(site, ({ tags }) => tags.some(breaksPolicy))).toEqual([]));
});

describe('the check of the policy', () => {
  it.each([
    '<p style="color:red">',
    '<p style>',
    '<style>p{}</style>',
    '<script>alert(1)</script>',
    '<script type="module">import "./x.js"</script>',
    '<button onclick="go()">',
    '<a href="javascript:go()">',
  ])('refuses %s', (html) => expect(readPage(html).tags.some(breaksPolicy)).toBe(true));

  it.each([
    '<script type="module" src="/x.js"></script>',
    '<script type="application/json">{"style":"<p style=\\"x\\">"}</script>',
    '<!-- <p style="x"> --><p class="style">',
  ])('accepts %s', (html) => expect(readPage(html).tags.some(breaksPolicy)).toBe(false));
});
