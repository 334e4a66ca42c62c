/**
 * How the site is searched: what of a page counts, and which words mean the same. The build makes the index with it, and
 * the page of search reads it.
 * Units: none. Source: definition.
 */
import type { Options } from 'minisearch';

/** One thing that can be found. */
export interface Findable {
  readonly id: number;
  readonly title: string;
  readonly says: string;
  /** More words by which it is found, which are not shown. */
  readonly words: string;
  /** What it is, in a word. */
  readonly kind: string;
  /** Its address below the base, with a slash before it. */
  readonly to: string;
}

/** What is said with a thing that was found. */
export type Found = Pick<Findable, 'title' | 'says' | 'kind' | 'to'>;

const SAID_SELDOM = 2; // letters: shorter words say nothing
const EMPTY_WORDS = new Set(
  'a i do is it in on of to my me so an as at be by or the and for how does what why when where which with from that this are was can should will not you your its has have did then than into much many'.split(
    ' ',
  ),
);

/** Words that people use for the same thing, each for the first of its line. */
const ALIKE = [
  'band blade bandsaw sawblade',
  'tension tight tighten tightening tightness tensioning tensioned',
  'stress psi mpa ksi',
  'stretch elongation elongate lengthen',
  'slack loose',
  'handle crank knob lever',
  'torque wrench spanner ftlb ft-lb nm ft·lbf',
  'dial indicator clock gage',
  'note pitch tone sound frequency hear pluck ring hz',
  'grease lubricant lube oil lubricate greased oiled',
  'washer collar bearing',
  'warm hot heat sun temperature warming cold frost',
  'crack break snap broke breaking cracking fatigue',
  'wavy wander waves drift dive',
  'tire tyre',
  'center centre',
  'sharpen sharpening resharpening re-sharpening grind',
  'guide guides',
  'inch inches thou thousandths mm millimeter millimeters',
  'safe safety danger dangerous injury caution cautions',
  'class classroom teach teacher teaching workshop lesson',
];

const FIRST_OF = new Map(
  ALIKE.flatMap((line) => {
    const words = line.split(' ');
    return words.map((word) => [word, words[0] ?? word] as const);
  }),
);

/** What a word is looked up as; nothing where it says nothing. */
export function lookedUp(word: string): string | false {
  const plain = word
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[\u0300-\u036f’']/g, '');
  if (plain.length < SAID_SELDOM || EMPTY_WORDS.has(plain)) return false;
  const single = plain.length > 3 ? plain.replace(/(?<=[^s])s$/, '') : plain;
  const bare = single.replace(/^(.*[aeiou].*?)([bdgmnprt]?)\2ing$/, '$1$2'); // snapping, snap
  return FIRST_OF.get(plain) ?? FIRST_OF.get(single) ?? FIRST_OF.get(bare) ?? bare;
}

/** The library's options, the same for who writes the index and who reads it. */
export const SEARCH: Options<Findable> = {
  fields: ['title', 'says', 'words'],
  storeFields: ['title', 'says', 'kind', 'to'],
  processTerm: lookedUp,
  searchOptions: {
    boost: { title: 3, words: 1.5 },
    prefix: (term) => term.length > 3,
    fuzzy: (term) => (term.length > 4 ? 0.2 : false),
  },
};
