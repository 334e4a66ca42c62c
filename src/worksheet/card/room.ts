/**
 * How much of several lists fits on one card. Paper of every size holds the same lines, as the card's letters grow with it.
 * Units: lines of the card.
 * Source: definition.
 */

/** One size of the card's letters, with what fits then below one line of the mill's name beside cautions, facts and log. */
export interface CardSize {
  readonly name: 'large' | 'middle' | 'small';
  readonly lines: number; // measured on the printed card with everything at its longest, the code of the link among it
  readonly letters: number; // in a line
}

/** The three, large first: a card takes the first that holds all that is on it. */
export const SIZES: readonly [CardSize, CardSize, CardSize] = [
  { name: 'large', lines: 16, letters: 80 },
  { name: 'middle', lines: 20.4, letters: 88 },
  { name: 'small', lines: 24.8, letters: 96 },
];

/** How many lines a sentence takes. */
export const linesOf = (sentence: string, letters: number): number =>
  Math.max(1, Math.ceil(sentence.length / letters));

/**
 * How many of each list fit: one of each in turn, first lists first, until none of what comes next fits. A list keeps
 * a line for the words about what it had to leave out.
 */
export function fitting(lists: readonly (readonly number[])[], lines: number): readonly number[] {
  const taken = lists.map(() => 0);
  let left = lines - lists.filter((costs) => costs.length > 0).length;
  const takeNext = (costs: readonly number[], at: number): boolean => {
    const cost = costs[taken[at] ?? 0];
    if (cost === undefined || cost > left) return false;
    taken[at] = (taken[at] ?? 0) + 1;
    left -= cost;
    return true;
  };
  let isGrowing = true;
  while (isGrowing) isGrowing = lists.map(takeNext).some(Boolean);
  return taken;
}
