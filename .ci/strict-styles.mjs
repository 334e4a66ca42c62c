/**
 * After the build, moves every style attribute into one stylesheet, so that the pages can live under a
 * Content-Security-Policy without 'unsafe-inline'. (KaTeX writes a few hundred such attributes a lesson.)
 */
import { createHash } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { attributeOf, elementsOf } from './html.mjs';

const STYLESHEET = 'set-type.css';

const className = (style) => `s-${createHash('sha256').update(style).digest('hex').slice(0, 8)}`;

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
export function strictPage(html, styles) {
  const edits = [];
  const elements = elementsOf(html);
  for (const element of elements) {
    const style = attributeOf(element, 'style');
    if (style === undefined) continue;
    styles.set(className(style), style);
    edits.push(...classForStyle(element, className(style)));
  }
  // A page that has none of those classes need not wait for their stylesheet.
  const link = elements.find((element) => attributeOf(element, 'href')?.endsWith(STYLESHEET));
  const { startOffset, endOffset } = link?.sourceCodeLocation ?? {};
  if (edits.length === 0 && link) edits.push([startOffset, endOffset, '']);
  edits.sort(([a], [b]) => b - a);
  return edits.reduce((text, [from, to, by]) => text.slice(0, from) + by + text.slice(to), html);
}

/** The Astro integration: rewrites the built pages and writes the stylesheet that the layout links. */
export function strictStyles() {
  return {
    name: 'strict-styles',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        const root = fileURLToPath(dir);
        const styles = new Map();
        const names = await readdir(root, { recursive: true });
        for (const name of names.filter((file) => file.endsWith('.html')).sort()) {
          const path = join(root, name);
          await writeFile(path, strictPage(await readFile(path, 'utf8'), styles));
        }
        const rules = [...styles].map(([name, style]) => `.${name}{${style}}`);
        await writeFile(join(root, STYLESHEET), `${rules.sort().join('\n')}\n`);
      },
    },
  };
}
