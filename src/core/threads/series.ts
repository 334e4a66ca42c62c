/**
 * Which diameters and pitches the thread standards list, as the standards print them.
 * Units: mm for metric and trapezoidal; inch and threads per inch for the others.
 * Source: `thread-standards-metric` (ISO 261), `iso-2901` (ISO 2904), `thread-standards-inch` (ASME
 * B1.1, B1.5 general purpose); lists from memory, compared in part with public tables. Left out:
 * sizes no small mill uses, and miniature and special series.
 */

/** Diameter and its pitches, mm. */
export type MetricRow = readonly [diameter: number, firstPitch: number, ...pitches: number[]];

/** The diameter as it is written, the same in inches, and threads per inch. */
export type InchRow = readonly [written: string, diameter: number, threadsPerInch: number];

/** ISO metric: the first pitch is the coarse one. */
export const metricRows: readonly MetricRow[] = [
  [6, 1, 0.75],
  [8, 1.25, 1, 0.75],
  [10, 1.5, 1.25, 1, 0.75],
  [12, 1.75, 1.5, 1.25, 1],
  [14, 2, 1.5, 1.25, 1],
  [16, 2, 1.5, 1],
  [18, 2.5, 2, 1.5, 1],
  [20, 2.5, 2, 1.5, 1],
  [22, 2.5, 2, 1.5, 1],
  [24, 3, 2, 1.5, 1],
  [27, 3, 2, 1.5, 1],
  [30, 3.5, 3, 2, 1.5, 1],
  [33, 3.5, 3, 2, 1.5],
  [36, 4, 3, 2, 1.5],
  [39, 4, 3, 2, 1.5],
  [42, 4.5, 4, 3, 2, 1.5],
  [45, 4.5, 4, 3, 2, 1.5],
  [48, 5, 4, 3, 2, 1.5],
  [52, 5, 4, 3, 2, 1.5],
  [56, 5.5, 4, 3, 2, 1.5],
  [60, 5.5, 4, 3, 2, 1.5],
  [64, 6, 4, 3, 2, 1.5],
];

/** ISO metric trapezoidal. */
export const trapezoidalRows: readonly MetricRow[] = [
  [8, 1.5],
  [9, 1.5, 2],
  [10, 1.5, 2],
  [11, 2, 3],
  [12, 2, 3],
  [14, 2, 3],
  [16, 2, 4],
  [18, 2, 4],
  [20, 2, 4],
  [22, 3, 5, 8],
  [24, 3, 5, 8],
  [26, 3, 5, 8],
  [28, 3, 5, 8],
  [30, 3, 6, 10],
  [32, 3, 6, 10],
  [34, 3, 6, 10],
  [36, 3, 6, 10],
  [38, 3, 7, 10],
  [40, 3, 7, 10],
  [42, 3, 7, 10],
  [44, 3, 7, 12],
  [46, 3, 8, 12],
  [48, 3, 8, 12],
  [50, 3, 8, 12],
  [52, 3, 8, 12],
];

/** Unified coarse, UNC. */
export const unifiedCoarseRows: readonly InchRow[] = [
  ['1/4', 0.25, 20],
  ['5/16', 0.3125, 18],
  ['3/8', 0.375, 16],
  ['7/16', 0.4375, 14],
  ['1/2', 0.5, 13],
  ['9/16', 0.5625, 12],
  ['5/8', 0.625, 11],
  ['3/4', 0.75, 10],
  ['7/8', 0.875, 9],
  ['1', 1, 8],
  ['1 1/8', 1.125, 7],
  ['1 1/4', 1.25, 7],
  ['1 3/8', 1.375, 6],
  ['1 1/2', 1.5, 6],
  ['1 3/4', 1.75, 5],
  ['2', 2, 4.5],
];

/** Unified fine, UNF. */
export const unifiedFineRows: readonly InchRow[] = [
  ['1/4', 0.25, 28],
  ['5/16', 0.3125, 24],
  ['3/8', 0.375, 24],
  ['7/16', 0.4375, 20],
  ['1/2', 0.5, 20],
  ['9/16', 0.5625, 18],
  ['5/8', 0.625, 18],
  ['3/4', 0.75, 16],
  ['7/8', 0.875, 14],
  ['1', 1, 12],
  ['1 1/8', 1.125, 12],
  ['1 1/4', 1.25, 12],
  ['1 3/8', 1.375, 12],
  ['1 1/2', 1.5, 12],
];

/** Acme general purpose. */
export const acmeRows: readonly InchRow[] = [
  ['1/4', 0.25, 16],
  ['5/16', 0.3125, 14],
  ['3/8', 0.375, 12],
  ['7/16', 0.4375, 12],
  ['1/2', 0.5, 10],
  ['5/8', 0.625, 8],
  ['3/4', 0.75, 6],
  ['7/8', 0.875, 6],
  ['1', 1, 5],
  ['1 1/8', 1.125, 5],
  ['1 1/4', 1.25, 5],
  ['1 3/8', 1.375, 4],
  ['1 1/2', 1.5, 4],
  ['1 3/4', 1.75, 4],
  ['2', 2, 4],
];
