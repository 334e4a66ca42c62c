/** Reading built pages, with a parser that reads them as a browser without script does. */
import { parse } from 'parse5';

/** @typedef {import('parse5').DefaultTreeAdapterMap['element']} Element */

/** Every element below a node in the order of the page, with where it stands in the text. */
export const elementsBelow = (node) =>
  [...(node.childNodes ?? []), ...(node.content?.childNodes ?? [])].flatMap((child) => [
    ...('attrs' in child ? [child] : []),
    ...elementsBelow(child),
  ]);

/** @type {(html: string) => readonly Element[]} */
export const elementsOf = (html) =>
  elementsBelow(parse(html, { sourceCodeLocationInfo: true, scriptingEnabled: false }));

/** @type {(element: Element, wanted: string) => string | undefined} */
export const attributeOf = ({ attrs }, wanted) => attrs.find(({ name }) => name === wanted)?.value;

/** A text with pieces of it, from and to some places, put otherwise; put together once, for a page has thousands of them. */
export function edited(text, edits) {
  const inOrder = edits.toSorted(([a], [b]) => a - b);
  const pieces = inOrder.map(([from, , by], place) => [
    text.slice(place > 0 ? inOrder[place - 1][1] : 0, from),
    by,
  ]);
  const rest = text.slice(inOrder.at(-1)?.[1] ?? 0);
  return [...pieces.flat(), rest].join('');
}
