/**
 * The ways of finding zero that are repeated many times over, and which of the bins of their errors each falls into.
 * Units: m.
 * Source: definition.
 */

/** By eye from the needle, by eye with a ruler, by the classroom rule, by all readings. */
export const RULES = ['needle', 'ruler', 'classroom', 'full'] as const;

/** One of them. */
export type Rule = (typeof RULES)[number];

/** Width of a bin: the step to which the dial is read. */
export const BIN = 5e-6;

/** How far the bins reach on either side of the true zero; the middle one has it in its middle. */
export const REACH = 26.5 * BIN;
