/**
 * Every thread that the project knows by name, with its size.
 * Units: SI only (m).
 * Source: the lists of `thread-series.ts`.
 */
import type { FamilySize } from './as-written.ts';
import { inch } from './form.ts';
import type { ThreadFamily } from './profile.ts';
import type { InchRow, MetricRow } from './series.ts';
import {
  acmeRows,
  metricRows,
  trapezoidalRows,
  unifiedCoarseRows,
  unifiedFineRows,
} from './series.ts';

/** One thread by its name, such as `M20`, `M20x1.5`, `3/4-10 UNC`, `1 1/8-5 Acme` or `Tr20x4`. */
export interface ListedThread extends FamilySize {
  readonly designation: string;
}

function metricThread(family: ThreadFamily, letters: string, diameter: number, pitch: number) {
  const designation = `${letters}${diameter}x${pitch}`;
  return { designation, family, majorDiameter: diameter / 1000, pitch: pitch / 1000 };
}

function inchThreads(family: ThreadFamily, suffix: string, rows: readonly InchRow[]) {
  return rows.map(([written, diameter, threadsPerInch]) => ({
    designation: `${written}-${threadsPerInch} ${suffix}`,
    family,
    majorDiameter: diameter * inch,
    pitch: inch / threadsPerInch,
  }));
}

/** A coarse metric thread is named by its diameter alone. */
function coarseThread([diameter, pitch]: MetricRow): ListedThread {
  return { ...metricThread('metric', 'M', diameter, pitch), designation: `M${diameter}` };
}

/** Every listed thread, family by family, coarse before fine; `M20` stands for `M20x2.5`. */
export const listedThreads: readonly ListedThread[] = [
  ...metricRows.map(coarseThread),
  ...metricRows.flatMap(([diameter, , ...fine]) =>
    fine.map((pitch) => metricThread('metric', 'M', diameter, pitch)),
  ),
  ...inchThreads('unified', 'UNC', unifiedCoarseRows),
  ...inchThreads('unified', 'UNF', unifiedFineRows),
  ...inchThreads('acme', 'Acme', acmeRows),
  ...trapezoidalRows.flatMap(([diameter, ...pitches]) =>
    pitches.map((pitch) => metricThread('trapezoidal', 'Tr', diameter, pitch)),
  ),
];

/** The names of all listed threads, for a list to choose from. */
export const threadDesignations: readonly string[] = listedThreads.map(
  ({ designation }) => designation,
);
