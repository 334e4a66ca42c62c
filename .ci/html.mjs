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

/** A text with pieces of it, from and to some places, put otherwise. */
export const edited = (text, edits) =>
  edits
    .toSorted(([a], [b]) => b - a)
    .reduce((before, [from, to, by]) => before.slice(0, from) + by + before.slice(to), text);
