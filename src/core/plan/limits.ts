/**
 * What a plan for a measurement may hold, fewest and most. Apart from the plan itself, so that a form can know it alone.
 * Units: readings, series; share of the top load at the first reading.
 * Source: common practice, no source.
 */
export const planLimits = { steps: [6, 30], series: [1, 5], firstShare: [0, 0.9] } as const;
