/**
 * After the build, moves every page's style attributes into a stylesheet of its own, so that the pages can live under a
 * Content-Security-Policy without 'unsafe-inline'. (KaTeX writes a few hundred such attributes a lesson.)
 */
import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The layout links this name; it stands for the page's own stylesheet. */
const STYLESHEET = 'set-type.css';

const hashOf = (text) => createHash('sha256').update(text).digest('hex').slice(0, 8);
const className = (style) => `s-${hashOf(style).slice(0, 5)}`;

/** Takes the style attributes out of one page; `styles` collects class name to declaration. */
export function withoutStyleAttributes(html, styles) {
  return html.replace(/<[a-z][^<>]*?\sstyle="[^"]*"[^<>]*>/gi, (tag) => {
    const style = tag.match(/\sstyle="([^"]*)"/i)[1];
    const name = className(style);
    styles.set(name, style);
    const bare = tag.replace(/\sstyle="[^"]*"/i, '');
    if (/\sclass="/i.test(bare)) return bare.replace(/\sclass="/i, (c) => `${c}${name} `);
    return bare.replace(/(\/?>)$/, ` class="${name}"$1`);
  });
}

/** A page that has none of those classes need not wait for a stylesheet. */
export const withoutStylesheet = (html) =>
  html.replace(new RegExp(`<link rel="stylesheet" href="[^"]*${STYLESHEET}">`), '');

/** Writes one page's stylesheet, named after what is in it; resolves to the page that links it. */
async function withOwnStylesheet(root, html, styles) {
  if (styles.size === 0) return withoutStylesheet(html);
  const rules = [...styles]
    .map(([name, style]) => `.${name}{${style}}`)
    .sort()
    .join('\n');
  const name = `assets/set-type.${hashOf(rules)}.css`;
  await mkdir(join(root, 'assets'), { recursive: true });
  await writeFile(join(root, name), rules);
  return html.replace(STYLESHEET, name);
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
