/**
 * What of a built page goes onto its card: its label, and of its first figure with a drawing the drawing and what is said:
 * an example's answer, else the figure's finding.
 */
import { serialize } from 'parse5';
import { attributeOf, elementsBelow, elementsOf } from '../html.mjs';

const hasClass = (element, name) =>
  (element.attrs && attributeOf(element, 'class'))?.split(/\s+/).includes(name);

/** The text of an element, as it is read in metric units. */
function textOf(node) {
  if (hasClass(node, 'q-us')) return '';
  const text =
    node.nodeName === '#text' ? node.value : (node.childNodes ?? []).map(textOf).join('');
  return text.replace(/[ \n]+/g, ' '); // a number keeps its unit beside it
}

/** The drawing for narrow screens in metric units: what is inside its svg, and its size. */
function drawingOf(body) {
  const svg = elementsBelow(body).find(({ tagName }) => tagName === 'svg');
  if (!svg) return undefined;
  return {
    viewBox: attributeOf(svg, 'viewBox'),
    svg: serialize(svg).replaceAll('&nbsp;', '&#160;'), // no word of XML
  };
}

/** The first figure that is drawn; undefined where there is none. */
export function pageFigure(html) {
  const elements = elementsOf(html);
  const heading = elements.find(({ tagName }) => tagName === 'h1');
  const label = elements.find((each) => hasClass(each, 'label'));
  const answer = elements.find((each) => hasClass(each, 'answer') && each.tagName === 'p');
  if (!heading || !label) return undefined;
  for (const figure of elements.filter(({ tagName }) => tagName === 'live-figure')) {
    const body = elementsBelow(figure).find(
      (each) => hasClass(each, 'variant-narrow') && hasClass(each, 'q-metric'),
    );
    const drawing = body && drawingOf(body);
    if (!drawing) continue;
    const said = (name) => textOf(elementsBelow(body).find((each) => hasClass(each, name))).trim();
    return {
      label: textOf(label).trim(),
      title: textOf(heading).trim(),
      says: answer ? textOf(answer).trim() : said('finding'),
      description: said('visually-hidden'),
      drawing,
    };
  }
  return undefined;
}
