/** The sentences of a built page that a reader meets without opening anything. */
import { attribute, type Page, type Tag, wordsOf } from './html.ts';

const BLOCKS = new Set(['p', 'li', 'figcaption', 'dd']); // running text, not labels and headings
const UNSEEN = new Set(['details', 'script', 'style', 'template', 'svg']);
const UNSEEN_CLASS = /\b(katex|visually-hidden|q-us|needs-no-script)\b/;

const isUnseen = (tag: Tag): boolean =>
  UNSEEN.has(tag.tagName) || UNSEEN_CLASS.test(attribute(tag, 'class'));

/** The words inside a tag in their order. */
function textIn(tag: Tag): string {
  return tag.childNodes
    .map((node) => {
      if (!('tagName' in node)) return wordsOf(node);
      return isUnseen(node) ? ' ' : textIn(node);
    })
    .join('');
}

function isShown(tag: Tag): boolean {
  const parent = tag.parentNode;
  if (isUnseen(tag)) return false;
  return !parent || !('tagName' in parent) || isShown(parent);
}

const SENTENCE_END = /(?<=[.?!:][”"’]?)\s+(?=[\p{Lu}“])/u;

/** All sentences of the running text, one after the other. */
export function visibleSentences({ tags }: Page): readonly string[] {
  const blocks = tags.filter((tag) => BLOCKS.has(tag.tagName) && isShown(tag));
  const innermost = blocks.filter(
    (tag) => !tag.childNodes.some((node) => 'tagName' in node && BLOCKS.has(node.tagName)),
  );
  return innermost
    .flatMap((tag) => textIn(tag).replace(/\s+/g, ' ').trim().split(SENTENCE_END))
    .filter((sentence) => /\p{L}{2}/u.test(sentence));
}
