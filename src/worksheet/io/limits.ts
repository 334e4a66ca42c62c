/** How long what is kept in the browser stays there. */

/** Days in the bin, and for how many hours and days one earlier version of a sheet each is kept. */
export const KEPT = { binDays: 30, hourlyVersions: 24, dailyVersions: 30 } as const;
