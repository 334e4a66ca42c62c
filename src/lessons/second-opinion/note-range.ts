/**
 * The notes that spans of small mills have: from a wide band's free strand to a narrow band between close guides.
 * Units: Hz.
 * Source: the invented mills at the ends of the stress in use, with a margin (derived here).
 */

/** The lowest and the highest note. */
export const NOTE_RANGE = { low: 18, high: 400 } as const;
