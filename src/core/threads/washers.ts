/**
 * The plain washer that belongs to a thread: what lies under a nut or a screw's head where nobody has looked.
 * Units: mm for metric sizes and inch for the others in the lists; SI out (m).
 * Source: `iso-7089` (normal series); `asme-b18-21-1` (type A plain, narrow series, the one that fits under a nut;
 * from 1 3/4 in on the single series there is).
 */
import { assertPositive } from '../assert.ts';
import { inch } from './form.ts';

/** A plain washer. */
export interface Washer {
  readonly innerDiameter: number; // m
  readonly outerDiameter: number; // m
}

/** Whose washers fit: those of metric threads, or those of inch threads. */
export type WasherSystem = 'metric' | 'inch';

/** Nominal size, hole and outside diameter. */
type Row = readonly [size: number, inner: number, outer: number];

const metricRows: readonly Row[] = [
  [6, 6.4, 12],
  [8, 8.4, 16],
  [10, 10.5, 20],
  [12, 13, 24],
  [14, 15, 28],
  [16, 17, 30],
  [18, 19, 34],
  [20, 21, 37],
  [22, 23, 39],
  [24, 25, 44],
  [27, 28, 50],
  [30, 31, 56],
  [33, 34, 60],
  [36, 37, 66],
  [39, 42, 72],
  [42, 45, 78],
  [45, 48, 85],
  [48, 52, 92],
  [52, 56, 98],
  [56, 62, 105],
  [60, 66, 110],
  [64, 70, 115],
];

const inchRows: readonly Row[] = [
  [0.25, 0.281, 0.625],
  [0.3125, 0.344, 0.688],
  [0.375, 0.406, 0.812],
  [0.4375, 0.469, 0.922],
  [0.5, 0.531, 1.062],
  [0.5625, 0.594, 1.156],
  [0.625, 0.656, 1.312],
  [0.75, 0.812, 1.469],
  [0.875, 0.938, 1.75],
  [1, 1.062, 2],
  [1.125, 1.25, 2.25],
  [1.25, 1.375, 2.5],
  [1.375, 1.5, 2.75],
  [1.5, 1.625, 3],
  [1.75, 1.875, 4],
  [2, 2.125, 4.5],
];

const lists = { metric: [0.001, metricRows], inch: [inch, inchRows] } as const;

const SAME_SIZE = 1e-6; // m: a size typed in the other unit is rounded

/**
 * The washer of the nearest nominal size not below a thread's outside diameter in m; beyond the list the largest, in
 * proportion. @throws RangeError unless the diameter is above 0
 */
export function plainWasher(system: WasherSystem, majorDiameter: number): Washer {
  assertPositive('majorDiameter', majorDiameter, 'm');
  const [unit, rows] = lists[system];
  const row = rows.find(([size]) => size * unit >= majorDiameter - SAME_SIZE);
  const [size, inner, outer] = row ?? (rows.at(-1) as Row);
  const grown = row ? unit : majorDiameter / size;
  return { innerDiameter: inner * grown, outerDiameter: outer * grown };
}
