/**
 * After the build, moves every style attribute into one stylesheet, so that the pages can live under a
 * Content-Security-Policy without 'unsafe-inline'. (KaTeX writes a few hundred such attributes a lesson.)
 */
import { createHash } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const STYLESHEET = 'set-type.css';

const className = (style) => `s-${createHash('sha256').update(style).digest('hex').slice(0, 8)}`;

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

/** A page that has none of those classes need not wait for their stylesheet. */
export const withoutStylesheet = (html) =>
  html.replace(new RegExp(`<link rel="stylesheet" href="[^"]*${STYLESHEET}">`), '');

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
          const html = await readFile(path, 'utf8');
          const strict = withoutStyleAttributes(html, styles);
          await writeFile(path, strict === html ? withoutStylesheet(html) : strict);
        }
        const rules = [...styles].map(([name, style]) => `.${name}{${style}}`);
        await writeFile(join(root, STYLESHEET), `${rules.sort().join('\n')}\n`);
      },
    },
  };
}
