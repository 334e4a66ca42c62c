/** The four sheets and the four reasons in words, in the order of their numbers. */

/** Sheets from four mills of one make. */
export const SHEET_NAMES = ['sheet 1', 'sheet 2', 'sheet 3', 'sheet 4'] as const;

/** What the reader may suppose; each is the right one for one of the sheets. */
export const REASON_WORDS = [
  'nothing is wrong',
  'the thread is dry',
  'the thread has two starts',
  'one strand was forgotten',
] as const;
