/** What a page may weigh over a slow connection in a yard: the project's own budgets, in gzip bytes. */
import { readdirSync, statSync } from 'node:fs';
import { join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { type BuiltSite, builtText, linkedFile, SITES } from './built-site.ts';
import { attribute, type Page } from './html.ts';

const KILOBYTE = 1000;
const PAGE = 60 * KILOBYTE;
const PLAY_SCRIPT = 30 * KILOBYTE;
const SMALLEST_SCRIPT = 130; // bytes: a file below that costs more to ask for than it brings
const FONTS = 70 * KILOBYTE; // compressed already
const SYMBOLS = /\/KaTeX_/; // faces of formulae: a page loads only those whose signs it shows

const LESSONS = 'content/lessons';
const STATIC_IMPORT = /\b(?:import|export)\b[^'"()]*?["'](\.{1,2}\/[^"']+)["']/g;

const site = SITES[0] as BuiltSite;
const weight = (text: string): number => gzipSync(text, { level: 9 }).length;

const slugs = readdirSync(LESSONS).map((name) => name.replace(/\.mdx$/, ''));
const pageOf = (slug: string): string => `lessons/${slug}/index.html`;
const worked = readdirSync('content/worked').map((name) => name.replace(/\.yaml$/, ''));
const workedPages = worked.map((key) => `worked/${key}/index.html`);

const startingScripts = (file: string, { tags }: Page): readonly string[] =>
  tags.flatMap((tag) => {
    const isPreload = tag.tagName === 'link' && attribute(tag, 'rel') === 'modulepreload';
    const link =
      tag.tagName === 'script' ? attribute(tag, 'src') : isPreload ? attribute(tag, 'href') : '';
    return link === '' ? [] : (linkedFile(site, file, link) ?? []);
  });

const importedBy = (file: string): readonly string[] =>
  [...builtText(site, file).matchAll(STATIC_IMPORT)].map((match) =>
    posix.join(posix.dirname(file), match[1] ?? ''),
  );

/** Every script that runs before the reader does anything, each once. */
function scriptsAtLoad(file: string, page: Page): ReadonlySet<string> {
  const found = new Set(startingScripts(file, page));
  for (const script of found) for (const imported of importedBy(script)) found.add(imported);
  return found;
}

const heavy = (
  weights: readonly (readonly [string, number])[],
  budget: number,
): readonly string[] =>
  weights
    .filter(([, bytes]) => bytes > budget)
    .map(([file, bytes]) => `${file}: ${bytes} of ${budget}`);

/** Figures that a lesson's scripts can ask for, by the names of their files. */
const figuresNamedIn = (text: string): readonly string[] =>
  [...text.matchAll(/\/([\w-]+)\.figure\./g)].map((match) => match[1] ?? '');

const figuresOf = (slug: string): readonly string[] =>
  readdirSync(`src/lessons/${slug}`).flatMap(
    (name) => name.match(/^(.+)\.figure\.tsx$/)?.[1] ?? [],
  );

/** What of other lessons a page loads or can ask for: their models by name, their figures by file. */
function siblingsIn(slug: string): readonly string[] {
  const scripts = [...scriptsAtLoad(pageOf(slug), site.pages.get(pageOf(slug)) as Page)];
  const text = scripts.map((script) => builtText(site, script)).join('\n');
  const models = slugs.filter((other) => text.includes(`name:\`${other}\``));
  expect(models).toContain(slug);
  expect(figuresNamedIn(text)).toEqual(expect.arrayContaining([...figuresOf(slug)]));
  return [
    ...models.filter((other) => other !== slug),
    ...figuresNamedIn(text).filter((name) => !figuresOf(slug).includes(name)),
  ];
}

describe('weight', () => {
  it(`of a page is at most ${PAGE / KILOBYTE} kB`, () => {
    const weights = [...site.pages].map(([file, { html }]) => [file, weight(html)] as const);
    expect(heavy(weights, PAGE)).toEqual([]);
  });

  it(`of the script at load, at home, in a lesson and in an example, is at most ${PLAY_SCRIPT / KILOBYTE} kB`, () => {
    const weights = ['index.html', ...slugs.map(pageOf), ...workedPages].map((file) => {
      const scripts = scriptsAtLoad(file, site.pages.get(file) as Page);
      expect(scripts.size).toBeGreaterThan(0);
      const bytes = [...scripts].reduce((sum, each) => sum + weight(builtText(site, each)), 0);
      return [file, bytes] as const;
    });
    expect(heavy(weights, PLAY_SCRIPT)).toEqual([]);
  });

  it.each(slugs)('of %s holds nothing of another lesson', (slug) =>
    expect(siblingsIn(slug)).toEqual([]),
  );

  it(`is not spread over scripts of under ${SMALLEST_SCRIPT} bytes`, () => {
    const scripts = [...site.files].filter((file) => /^assets\/.*\.js$/.test(file));
    expect(scripts.length).toBeGreaterThan(0);
    expect(scripts.filter((file) => builtText(site, file).length < SMALLEST_SCRIPT)).toEqual([]);
  });

  it(`of the two text faces together is at most ${FONTS / KILOBYTE} kB`, () => {
    const fonts = [...site.files].filter((file) => /\.woff2$/.test(file) && !SYMBOLS.test(file));
    const bytes = fonts.reduce((sum, file) => sum + statSync(join(site.folder, file)).size, 0);
    expect(fonts.length).toBeGreaterThan(0);
    expect(bytes).toBeLessThanOrEqual(FONTS);
  });
});
