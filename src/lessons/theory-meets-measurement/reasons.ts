/** The four sheets and the four reasons, in the order in which they stand. */

/** Sheets from four mills of one make. */
export const SHEETS = ['first', 'second', 'third', 'fourth'] as const;

/** What the reader may suppose; each is the right one for one of the sheets. */
export const REASONS = ['nothing', 'dryThread', 'twoStarts', 'forgottenStrand'] as const;

/** The same in words. */
export const REASON_WORDS = {
  nothing: 'nothing is wrong',
  dryThread: 'the thread is dry',
  twoStarts: 'the thread has two starts',
  forgottenStrand: 'one strand was forgotten',
} as const satisfies Readonly<Record<(typeof REASONS)[number], string>>;
