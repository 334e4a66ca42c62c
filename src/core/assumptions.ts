/**
 * Every number that is assumed and not given: written once, read everywhere.
 * Units: SI only, said beside each.
 * Source: said beside each.
 */

/** Tension in use on small mills, Pa: common practice, no source. */
export const workingStress = { low: 60e6, high: 170e6 } as const;
