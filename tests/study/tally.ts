/**
 * Bias, spread and coverage of a way of finding zero, counted over simulated series whose true
 * zero is 0.
 * Units: m; coverage as a share.
 * Source: definition.
 */
import { mean, standardDeviation } from '../../src/core/summary.ts';

/** A zero, with its 95 % interval where the way gives one. */
export interface FoundZero {
  readonly zero: number;
  readonly low?: number;
  readonly high?: number;
}

/** What one cell of the study says of one way. */
export interface CellTally {
  readonly bias: number;
  readonly spread: number;
  readonly coverage: number | null;
  readonly halfWidth: number | null; // median
  readonly series: number;
}

/** Several cells together. */
export interface Tally {
  readonly meanBias: number; // mean of the size of the bias of each cell
  readonly worstBias: number;
  readonly spread: number; // root mean square
  readonly rmse: number; // root mean square of the error
  readonly coverage: number | null; // mean
  readonly worstCoverage: number | null;
  readonly halfWidth: number | null; // mean of the medians
  readonly cells: number;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] as number;
}

/** Counts one cell; needs at least 2 series. */
export function cellTally(found: readonly FoundZero[]): CellTally {
  const zeros = found.map(({ zero }) => zero);
  const intervals = found.flatMap(({ low, high }) =>
    low === undefined || high === undefined ? [] : [{ low, high }],
  );
  const held = intervals.filter(({ low, high }) => low <= 0 && 0 <= high).length;
  const any = intervals.length > 0;
  return {
    bias: mean(zeros),
    spread: standardDeviation(zeros),
    coverage: any ? held / intervals.length : null,
    halfWidth: any ? median(intervals.map(({ low, high }) => (high - low) / 2)) : null,
    series: found.length,
  };
}

/** Puts cells together, each with the same weight; needs at least one. */
export function tally(cells: readonly CellTally[]): Tally {
  const biases = cells.map(({ bias }) => Math.abs(bias));
  const coverages = cells.flatMap(({ coverage }) => (coverage === null ? [] : [coverage]));
  const widths = cells.flatMap(({ halfWidth }) => (halfWidth === null ? [] : [halfWidth]));
  const any = coverages.length > 0;
  const square = (pick: (cell: CellTally) => number): number => mean(cells.map(pick));
  return {
    meanBias: mean(biases),
    worstBias: Math.max(...biases),
    spread: Math.sqrt(square(({ spread }) => spread ** 2)),
    rmse: Math.sqrt(square(({ bias, spread }) => bias ** 2 + spread ** 2)),
    coverage: any ? mean(coverages) : null,
    worstCoverage: any ? Math.min(...coverages) : null,
    halfWidth: any ? mean(widths) : null,
    cells: cells.length,
  };
}
