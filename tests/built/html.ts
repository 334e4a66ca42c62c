/** A built page read tag by tag. Astro writes well-formed HTML with quoted attributes; nothing else is read. */

export interface Tag {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
}

export interface Page {
  readonly html: string;
  readonly tags: readonly Tag[];
  readonly anchors: ReadonlySet<string>;
}

const NOT_MARKUP =
  /<!--[\s\S]*?-->|(?<=<script\b[^>]*>)[\s\S]*?(?=<\/script>)|(?<=<style\b[^>]*>)[\s\S]*?(?=<\/style>)/gi;
const TAG =
  /<([a-z][\w:-]*)((?:\s+[^\s=>"'/]+(?:\s*=\s*(?:"[^"]*"|'[^']*'|[^\s"'>]+))?)*)\s*\/?>/gi;
const ATTRIBUTE = /([^\s=>"'/]+)(?:\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"'>]+)))?/g;

const ENTITIES: Readonly<Record<string, string>> = { amp: '&', quot: '"', lt: '<', gt: '>' };

const decoded = (text: string): string =>
  text
    .replace(/&#(x?)([\da-f]+);/gi, (_, hex, code) =>
      String.fromCodePoint(Number.parseInt(code, hex ? 16 : 10)),
    )
    .replace(/&(amp|quot|lt|gt);/g, (_, name) => ENTITIES[name] ?? '');

function attributesOf(text: string): ReadonlyMap<string, string> {
  const found = [...text.matchAll(ATTRIBUTE)];
  return new Map(
    found.map(([, name = '', ...values]) => [
      name.toLowerCase(),
      decoded(values.find((value) => value !== undefined) ?? ''),
    ]),
  );
}

/** Every opening tag of a page in order, without what stands in comments, scripts and styles. */
export function tagsOf(html: string): readonly Tag[] {
  return [...html.replace(NOT_MARKUP, '').matchAll(TAG)].map(([, name = '', text = '']) => ({
    name: name.toLowerCase(),
    attributes: attributesOf(text),
  }));
}

/** A page with its tags, and the ids that a link can lead to. */
export function readPage(html: string): Page {
  const tags = tagsOf(html);
  const anchors = new Set(tags.flatMap(({ attributes }) => attributes.get('id') ?? []));
  return { html, tags, anchors };
}

/** The value of an attribute of one tag, or an empty text. */
export const attribute = (tag: Tag | undefined, name: string): string =>
  tag?.attributes.get(name) ?? '';
