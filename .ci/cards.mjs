/**
 * After the build, draws a card for every lesson and every worked example from the page's own figure: the picture that a
 * messenger shows of a link. The pages named the card of the whole site; now they name their own.
 */
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { drawingStyles, tokensOf } from './cards/drawing-styles.mjs';
import { cardSvg } from './cards/figure-card.mjs';
import { pageFigure } from './cards/page-figure.mjs';
import { rasterizer } from './cards/rasterizer.mjs';
import { attributeOf, edited, elementsOf } from './html.mjs';
import { root } from './machine.mjs';

const WITH_CARDS = /^(lessons|worked)\/[^/]+\/index\.html$/;
const STYLESHEETS = ['tokens', 'field', 'figures'].map((name) => `src/styles/${name}.css`);
const SITES_OWN = /card\.png$/;

/** The page with another picture in its head, and words for who does not see it. */
export function withCard(html, address, alt) {
  const wanted = new Map([
    ['og:image', (before) => before.replace(SITES_OWN, address)],
    ['og:image:alt', () => alt],
  ]);
  const edits = elementsOf(html).flatMap((element) => {
    const change = wanted.get(attributeOf(element, 'property'));
    if (!change) return [];
    const { startOffset, endOffset } = element.sourceCodeLocation.attrs.content;
    const value = change(attributeOf(element, 'content'));
    return [
      [
        startOffset,
        endOffset,
        `content="${value.replaceAll('&', '&amp;').replaceAll('"', '&quot;')}"`,
      ],
    ];
  });
  return edited(html, edits);
}

async function kit() {
  const [texts, favicon, { png, width }] = await Promise.all([
    Promise.all(STYLESHEETS.map((path) => readFile(join(root, path), 'utf8'))),
    readFile(join(root, 'public/favicon.svg'), 'utf8'),
    rasterizer(),
  ]);
  const mark = favicon.replace(/<svg[^>]*>|<\/svg>|<title>.*<\/title>/g, '');
  return { png, widthOf: width, tokens: tokensOf(texts), styles: drawingStyles(texts), mark };
}

/** Draws the card of one built page, and names it there. @throws where the page has no figure to draw */
async function giveCard(folder, name, drawn) {
  const page = join(folder, name);
  const html = await readFile(page, 'utf8');
  const figure = pageFigure(html);
  if (!figure) throw new RangeError(`${name} must have a figure for its card`);
  const { label, title, says, description } = figure;
  const about = name.startsWith('lessons/') ? `${label} · ${title}` : title;
  const svg = cardSvg({ ...figure, about }, drawn);
  const address = `cards/${dirname(name)}.png`;
  await mkdir(join(folder, dirname(address)), { recursive: true });
  await writeFile(join(folder, address), drawn.png(svg));
  await writeFile(page, withCard(html, address, `${says} ${description}`));
}

/** The Astro integration. */
export function cards() {
  return {
    name: 'cards',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        const folder = fileURLToPath(dir);
        const names = (await readdir(folder, { recursive: true }))
          .map((name) => name.replaceAll('\\', '/'))
          .filter((name) => WITH_CARDS.test(name));
        const drawn = await kit();
        for (const name of names) await giveCard(folder, name, drawn);
        logger.info(`${names.length} cards drawn`);
      },
    },
  };
}
