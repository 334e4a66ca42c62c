/**
 * The card of a page that has a figure, as SVG: what page it is, what the figure finds, whose it is, and the figure's
 * drawing for narrow screens, whose letters are the largest. Units: px of the card.
 */
import { lines } from '../../src/live/sharing/lines.ts';

/** The size that messengers ask for. */
export const CARD = { width: 1200, height: 630 };

const MARGIN = 48;
const GAP = 44; // between words and drawing
const DRAWING = { width: 610, height: 550 }; // at most
const SANS = 'Fira Sans Condensed';
const SERIF = 'Alegreya';
const LABEL = { size: 28, leading: 34, family: SANS };
const SITE = { size: 30, family: SANS };
const SIGNATURE = 74; // with the space above it
const FINDING_SIZES = [60, 56, 52, 48, 44, 40]; // the first that fits

const escaped = (text) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');

/** Lines of a text, the first on `top`, and how high they are. */
function block(words, { size, leading, family }, top, ink) {
  const rows = words.map(
    (text, place) =>
      `<text x="${MARGIN}" y="${top + place * leading + size}" font-family="${family}" font-size="${size}" fill="${ink}">${escaped(text)}</text>`,
  );
  return { svg: rows.join(''), height: words.length * leading };
}

/** The drawing in its place at the right, as large as it may be. */
function placed({ svg, viewBox }, tokens) {
  const [, , width, height] = viewBox.split(' ').map(Number);
  const scale = Math.min(DRAWING.width / width, DRAWING.height / height);
  const [left, top] = [CARD.width - MARGIN - scale * width, (CARD.height - scale * height) / 2];
  return {
    left,
    svg: `<g transform="translate(${left} ${top}) scale(${scale})" font-family="${SANS}" font-size="14" fill="${tokens.get('--ink')}">${svg}</g>`,
  };
}

/** The mark of the site and its name, at the foot. */
function signature(mark, tokens) {
  const bottom = CARD.height - MARGIN;
  return `<g transform="translate(${MARGIN} ${bottom - 34}) scale(1.15)">${mark}</g><text x="${MARGIN + 50}" y="${bottom - 6}" font-family="${SITE.family}" font-size="${SITE.size}" fill="${tokens.get('--ink')}">The tension notebook</text>`;
}

/** The largest lettering in which it fits under `top`. */
function fitted(says, width, top, widthOf) {
  const room = CARD.height - MARGIN - SIGNATURE - top;
  for (const size of FINDING_SIZES) {
    const lettering = { size, leading: Math.round(1.16 * size), family: SERIF };
    const words = lines(says, width, lettering, (text) => widthOf(text, lettering));
    if (words.length * lettering.leading <= room) return { words, lettering };
  }
  throw new RangeError(`what a card says must fit (was “${says}”)`);
}

/** The card. @throws where its words do not fit */
export function cardSvg({ about, says, drawing }, { tokens, styles, mark, widthOf }) {
  const [paper, ink, pencil] = ['--paper', '--ink', '--pencil'].map((name) => tokens.get(name));
  const right = placed(drawing, tokens);
  const width = right.left - GAP - MARGIN;
  const above = lines(about, width, LABEL, (text) => widthOf(text, LABEL));
  const head = block(above, LABEL, MARGIN - 6, pencil);
  const rule = MARGIN + head.height + 8;
  const { words, lettering } = fitted(says, width, rule + 14, widthOf);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${CARD.width}" height="${CARD.height}">`,
    `<style>${escaped(styles)}</style>`,
    `<rect width="${CARD.width}" height="${CARD.height}" fill="${paper}"/>`,
    head.svg,
    `<path d="M${MARGIN} ${rule}h${width}" stroke="${ink}" stroke-width="2"/>`,
    block(words, lettering, rule + 14, ink).svg,
    signature(mark, tokens),
    right.svg,
    '</svg>',
  ].join('');
}
