/**
 * After the build, moves every page's style attributes into a stylesheet of its own, so that the pages can live under a
 * Content-Security-Policy without 'unsafe-inline'. (KaTeX writes a few hundred such attributes a lesson.)
 */
import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { attributeOf, edited, elementsOf } from './html.mjs';

/** The layout links this name; it stands for the page's own stylesheet. */
const STYLESHEET = 'set-type.css';

const hashOf = (text) => createHash('sha256').update(text).digest('hex').slice(0, 8);
const className = (style) => `s-${hashOf(style).slice(0, 5)}`;

/** A class instead of the style attribute: first of those that the element has, or alone. */
function classForStyle({ sourceCodeLocation: { attrs } }, name) {
  const { startOffset, endOffset } = attrs.style;
  if (!attrs.class) return [[startOffset, endOffset, `class="${name}"`]];
  const first = attrs.class.startOffset + 'class="'.length;
  return [
    [startOffset - 1, endOffset, ''],
    [first, first, `${name} `],
  ];
}

/** One page without style attributes, every other letter as it was; `styles` collects class name to declaration. */
export function withoutStyleAttributes(html, styles) {
  const edits = elementsOf(html).flatMap((element) => {
    const style = attributeOf(element, 'style');
    if (style === undefined) return [];
    styles.set(className(style), style);
    return classForStyle(element, className(style));
  });
  return edited(html, edits);
}

/** The link to the page's own stylesheet by that name; none where there is nothing in it. */
export function withStylesheetNamed(html, name) {
  const link = elementsOf(html).find((each) => attributeOf(each, 'href')?.endsWith(STYLESHEET));
  if (!link) return html;
  const { startOffset, endOffset, attrs } = link.sourceCodeLocation;
  if (name === undefined) return edited(html, [[startOffset, endOffset, '']]);
  const { endOffset: end } = attrs.href;
  return edited(html, [[end - 1 - STYLESHEET.length, end - 1, name]]);
}

/** Writes one page's stylesheet, named after what is in it; resolves to the page that links it. */
async function withOwnStylesheet(root, html, styles) {
  if (styles.size === 0) return withStylesheetNamed(html, undefined);
  const rules = [...styles]
    .map(([name, style]) => `.${name}{${style}}`)
    .sort()
    .join('\n');
  const name = `assets/set-type.${hashOf(rules)}.css`;
  await mkdir(join(root, 'assets'), { recursive: true });
  await writeFile(join(root, name), rules);
  return withStylesheetNamed(html, name);
}

/** The Astro integration: rewrites the built pages and writes the stylesheets that they link. */
export function strictStyles() {
  return {
    name: 'strict-styles',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        const root = fileURLToPath(dir);
        const names = await readdir(root, { recursive: true });
        for (const name of names.filter((file) => file.endsWith('.html'))) {
          const path = join(root, name);
          const styles = new Map();
          const strict = withoutStyleAttributes(await readFile(path, 'utf8'), styles);
          await writeFile(path, await withOwnStylesheet(root, strict, styles));
        }
      },
    },
  };
}
