/**
 * The mistakes that the comparison of the three routes tries, and how each is called.
 * Units: none.
 * Source: definition.
 */

/** What may have gone wrong on one of the routes. */
export const MISTAKES = ['nothing', 'section', 'zero', 'harmonic', 'span'] as const;

/** The name of a mistake. */
export type Mistake = (typeof MISTAKES)[number];

/** The words of each choice. */
export const MISTAKE_WORDS: Readonly<Record<Mistake, string>> = {
  nothing: 'nothing',
  section: 'section taken too large',
  zero: 'zero set on a slack band',
  harmonic: 'second tone taken for the first',
  span: 'span measured too long',
};
