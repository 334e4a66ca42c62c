/** The words that a lesson explains where they stand in its text. Units: none. Source: definition. */

/** Keys of the terms in a lesson's own words. */
export function wordsUsed(body = ''): ReadonlySet<string> {
  return new Set([...body.matchAll(/<Term k="([\w-]+)"/g)].map(([, key]) => key ?? ''));
}
