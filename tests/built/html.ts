/** A built page, element by element. */
import { defaultTreeAdapter } from 'parse5';
import { attributeOf, elementsOf } from '../../.ci/html.mjs';

export type Tag = ReturnType<typeof elementsOf>[number];
type Node = Tag['childNodes'][number];

export interface Page {
  readonly html: string;
  readonly tags: readonly Tag[];
  readonly anchors: ReadonlySet<string>;
}

/** A page with its tags, and the ids that a link can lead to. */
export function readPage(html: string): Page {
  const tags = elementsOf(html);
  return { html, tags, anchors: new Set(tags.flatMap((tag) => attributeOf(tag, 'id') ?? [])) };
}

/** The value of an attribute of one tag, or an empty text. */
export const attribute = (tag: Tag | undefined, name: string): string =>
  (tag && attributeOf(tag, name)) ?? '';

/** Whether a tag has an attribute, be it an empty one. */
export const has = (tag: Tag, name: string): boolean => attributeOf(tag, name) !== undefined;

/** The words of a text; none where the node is anything else. */
export const wordsOf = (node: Node | undefined): string =>
  node && defaultTreeAdapter.isTextNode(node) ? node.value : '';
