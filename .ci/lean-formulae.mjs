/**
 * After the build, cuts what formulae need down to what the site's formulae use: of KaTeX's stylesheet the rules whose
 * classes stand on a page, of its faces the signs that are set in them. Each file gets a name after its new content.
 */
import { createHash } from 'node:crypto';
import { readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { basename, extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse } from 'parse5';
import postcss from 'postcss';
import subsetFont from 'subset-font';

const FACE = /KaTeX_[\w.-]+\.woff2/;

/** Calls `see` with each text of a formula as it is shown, and the classes of the elements around it. */
function eachFormulaText(node, see, classes = []) {
  const own = node.attrs?.find(({ name }) => name === 'class')?.value.split(/\s+/) ?? [];
  const around = [...classes, ...own];
  if (node.nodeName === '#text' && around.includes('katex-html')) see(node.value, around);
  for (const child of node.childNodes ?? []) eachFormulaText(child, see, around);
}

/** What the pages' formulae use: their classes, the letters set in italics, and all other signs. */
export function usedInFormulae(pages) {
  const used = { classes: new Set(), italic: new Set(), upright: new Set() };
  for (const html of pages) {
    for (const [, names] of html.matchAll(/\sclass="([^"]*)"/g))
      for (const name of names.split(/\s+/)) used.classes.add(name);
    eachFormulaText(parse(html), (text, classes) => {
      const signs = classes.includes('mathnormal') ? used.italic : used.upright;
      for (const sign of text) signs.add(sign);
    });
  }
  return used;
}

/** The stylesheet without the rules for classes, and without the faces, that nothing uses. */
export function usedRules(css, classes) {
  const root = postcss.parse(css);
  root.walkRules((rule) => {
    rule.selectors = rule.selectors.filter((selector) =>
      [...selector.matchAll(/\.([a-z][\w-]*)/gi)].every(([, name]) => classes.has(name)),
    );
    if (rule.selectors.join('') === '') rule.remove();
  });
  const rules = root.nodes.filter(({ type }) => type === 'rule').join('\n');
  root.walkAtRules('font-face', (face) => {
    const [, family = ''] = String(face).match(/font-family:\s*["']?([\w-]+)/) ?? [];
    if (!rules.includes(family)) face.remove();
  });
  return root.toString();
}

/** `set-tex.OLD.css` with new content becomes `set-tex.NEW.css`. */
function renamed(name, content) {
  const hash = createHash('sha256').update(content).digest('base64url').slice(0, 8);
  return `${name.split('.')[0]}.${hash}${extname(name)}`;
}

/** Puts a file in another's place; resolves to its name. */
async function replaceFile(folder, name, content) {
  const next = renamed(name, content);
  await rm(join(folder, name));
  await writeFile(join(folder, next), content);
  return next;
}

/** The signs that a face has to have; resolves to the face's new name. */
async function cutFace(folder, name, { italic, upright }) {
  const signs = name.startsWith('KaTeX_Math') ? italic : upright;
  const face = await readFile(join(folder, name));
  const cut = await subsetFont(face, [...signs].join(''), {
    targetFormat: 'woff2',
    noHinting: true,
  });
  return replaceFile(folder, name, cut);
}

async function cutStylesheet(folder, name, used) {
  let css = usedRules(await readFile(join(folder, name), 'utf8'), used.classes);
  for (const face of (await readdir(folder)).filter((file) => FACE.test(file))) {
    if (css.includes(face)) css = css.replaceAll(face, await cutFace(folder, face, used));
    else await rm(join(folder, face));
  }
  return replaceFile(folder, name, css);
}

/** The Astro integration. */
export function leanFormulae() {
  return {
    name: 'lean-formulae',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        const root = fileURLToPath(dir);
        const names = (await readdir(root, { recursive: true })).map((name) => join(root, name));
        const pages = new Map();
        for (const name of names.filter((file) => file.endsWith('.html')))
          pages.set(name, await readFile(name, 'utf8'));
        const used = usedInFormulae(pages.values());
        for (const sheet of names.filter((file) => file.endsWith('.css'))) {
          if (!FACE.test(await readFile(sheet, 'utf8'))) continue;
          const next = await cutStylesheet(join(sheet, '..'), basename(sheet), used);
          for (const [name, html] of pages) pages.set(name, html.replaceAll(basename(sheet), next));
        }
        for (const [name, html] of pages) await writeFile(name, html);
      },
    },
  };
}
