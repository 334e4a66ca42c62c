/**
 * How easily the visible text of a page reads, said in the report of the tests and no gate: the number knows nothing of
 * sense. 60 to 70 is plain English, 30 is a scientific paper.
 * Source: R. Flesch, A new readability yardstick, Journal of Applied Psychology 32 (1948) 221, by the packages `flesch`
 * and `syllable`.
 */
import { flesch } from 'flesch';
import { syllable } from 'syllable';
import { describe, expect, it } from 'vitest';
import { type BuiltSite, SITES } from './built-site.ts';
import { readPage } from './html.ts';
import { visibleSentences } from './visible-prose.ts';

const { pages } = SITES[0] as BuiltSite;

/** Reading ease and words a sentence. */
function easeOf(sentences: readonly string[]) {
  const words = sentences.flatMap((each) => each.match(/\p{L}[\p{L}’'-]*/gu) ?? []);
  const syllables = words.reduce((sum, word) => sum + syllable(word), 0);
  const ease = flesch({ sentence: sentences.length, word: words.length, syllable: syllables });
  return { ease: Math.round(ease), wordsInSentence: Math.round(words.length / sentences.length) };
}

describe('reading ease', () => {
  it('of every page is in the report', () => {
    const found = [...pages].map(([file, page]) => [file, easeOf(visibleSentences(page))] as const);
    console.table(Object.fromEntries(found));
    for (const [file, { ease }] of found) expect(ease, file).toBeGreaterThan(0);
  });

  it('is lower where words and sentences are longer', () => {
    const plain = easeOf(['The steel is a spring.', 'Pull it, and it gets longer.']);
    const heavy = easeOf(['Elastic deformation constitutes a reversible material phenomenon.']);
    expect(plain.ease).toBeGreaterThan(heavy.ease + 60);
  });
});

describe('the sentences of a page', () => {
  it('are those that are seen, each once', () => {
    const page = readPage(
      '<p>Pull it. “Let go.” <span class="visually-hidden">No.</span></p><details><p>Folded.</p></details><ul><li>One</li></ul>',
    );
    expect(visibleSentences(page)).toEqual(['Pull it.', '“Let go.”', 'One']);
  });
});
