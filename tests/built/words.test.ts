/**
 * Words of a built page never run into each other (a line break in a template beside a tag leaves no space behind), and
 * their apostrophes are those of print.
 */
import { describe, expect, it } from 'vitest';
import { SITES } from './built-site.ts';
import { readPage, type Tag, wordsOf } from './html.ts';

const WITHIN_A_LINE = /^(a|em|i)$/;

/** What stands before and in a tag, and in and after it, where the two touch. */
function runTogether(tag: Tag): boolean {
  const beside = tag.parentNode?.childNodes ?? [];
  const place = beside.indexOf(tag);
  const [before, after] = [wordsOf(beside[place - 1]), wordsOf(beside[place + 1])];
  const starts = /[\p{L}\d.,;:)]$/u.test(before) && /^\p{L}/u.test(wordsOf(tag.childNodes[0]));
  return starts || /^[\p{L}\d(]/u.test(after);
}

const oddTags = (tags: readonly Tag[]): readonly Tag[] =>
  tags.filter((tag) => WITHIN_A_LINE.test(tag.tagName) && runTogether(tag));

const CODE = /^(script|style|code|pre)$/;

/** Texts with an apostrophe of a typewriter inside a word or behind it. */
const typedApostrophes = (tags: readonly Tag[]): readonly string[] =>
  tags
    .filter(({ tagName }) => !CODE.test(tagName))
    .flatMap(({ childNodes }) => childNodes.filter((node) => !('tagName' in node)).map(wordsOf))
    .filter((words) => /\p{L}'(\p{L}|\s)/u.test(words));

const BRITISH =
  /\b((?:centi|milli|micro)?metres?|centre[sd]?|colour(?:s|ed)?|aluminium|tyres?|grey|neighbours?|behaviours?|labelled|favour\w*|towards|learnt|organis\w+|recognis\w+|analys(?:e|ed|ing)\b)/giu;

/** Words in British spelling that a reader sees. */
const british = (tags: readonly Tag[]): readonly string[] =>
  tags
    .filter(({ tagName }) => !CODE.test(tagName))
    .flatMap(({ childNodes }) => childNodes.filter((node) => !('tagName' in node)).map(wordsOf))
    .flatMap((words) => words.match(BRITISH) ?? []);

describe.each(SITES)('the words at $base', ({ pages }) => {
  it('stand apart from the links beside them', () => {
    const odd = [...pages].flatMap(([file, { tags }]) =>
      oddTags(tags).map(
        (tag) => `${file}, line ${tag.sourceCodeLocation?.startLine}: ${tag.tagName}`,
      ),
    );
    expect(odd).toEqual([]);
  });

  it('have the apostrophes of print', () => {
    const typed = [...pages].flatMap(([file, { tags }]) =>
      typedApostrophes(tags).map((words) => `${file}: ${words}`),
    );
    expect(typed).toEqual([]);
  });

  it('are in American spelling', () => {
    const found = [...pages].flatMap(([file, { tags }]) =>
      british(tags).map((word) => `${file}: ${word}`),
    );
    expect(found).toEqual([]);
  });
});

describe('the check of the words', () => {
  it.each(['anything here.<a href="/x/">Cautions</a>', 'see <a href="/x/">this</a>and that'])(
    'catches %s',
    (html) => expect(oddTags(readPage(html).tags)).toHaveLength(1),
  );

  it.each([
    ["<p>the mill's <code>'w'</code></p>", ["the mill's "]],
    ["<p>the wheels' bearings</p>", ["the wheels' bearings"]],
    ["<p>the mill’s</p><script>it's</script>", []],
  ])('finds the typed apostrophes of %s', (html, found) =>
    expect(typedApostrophes(readPage(html).tags)).toEqual(found),
  );

  it('finds British spellings, and takes American ones for none', () => {
    const html = '<p>centimetres of colour on a tyre</p><p>centimeters of color on a tire</p>';
    expect(british(readPage(html).tags)).toEqual(['centimetres', 'colour', 'tyre']);
  });

  it.each(['see <a href="/x/">this</a>, and that', '(<a href="/x/">this</a>)'])(
    'lets %s pass',
    (html) => expect(oddTags(readPage(html).tags)).toEqual([]),
  );
});
