/**
 * How much of several lists fits on one card. Paper of every size holds the same lines, as the card's letters grow with it.
 * Units: lines of the card.
 * Source: definition.
 */

/** What the lists may fill together; measured on the printed card with everything at its longest, the code of the link among it. */
export const CARD_LINES = 11;

/** Letters in a line of the card's small type. */
export const LETTERS = 82;

/** How many lines a sentence takes. */
export const linesOf = (sentence: string, letters: number = LETTERS): number =>
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
