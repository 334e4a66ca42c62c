/**
 * Where the hands of a dial stand for a position: the marks that the big hand has passed since the small one stood at 0.
 * Units: marks of the dial, a hundred to a turn.
 * Source: definition.
 */

/** Marks round the dial. */
export const MARKS = 100;

/** Whole turns of a position, as the small hand has passed them, and the marks of the big hand. */
export function handsAt(position: number): { readonly turns: number; readonly marks: number } {
  const turns = Math.floor(position / MARKS);
  return { turns, marks: position - turns * MARKS };
}
