/**
 * Toes of one length: smooth curves that die with load. Such curves are sums of few columns, which
 * makes hundreds of readings as quick as dozens.
 * Units: load as a share of the top load; readings in m; lists (n) are over the standard deviation of their reading.
 * Source: Gaussian-process regression with explicit basis functions, Rasmussen and Williams (2006),
 * 2.7 and 8.1 (few columns), from memory; the family of envelopes is derived here.
 */
import { fewColumns, inner } from '../statistics/matrix.ts';

const STRETCHED = 1.5; // the envelope and the correlation reach this many lengths
const NEGLECTED = 1e-15; // variance that the columns leave out of a toe of height 1, in squares of the repeatability

/** What lines are made of, over the standard deviation of each reading; the design has a column for each series, then the loads. */
export interface Design {
  readonly ones: Float64Array;
  readonly design: readonly Float64Array[];
}

/** All toes of one length and of height 1: the columns C whose sums they are, and what they make of each series. */
export interface Toes {
  readonly series: readonly number[]; // of each reading, counted from 0 without a gap
  readonly columns: readonly Float64Array[]; // r of n
  readonly products: readonly Float64Array[]; // CᵀC within each series, (r²)
  /** Cᵀ times a list within each series, (r). */
  readonly sharesOf: (list: Float64Array) => readonly Float64Array[];
}

/** Toes under an envelope that dies with load, whose values at near loads go together. */
export function toesOf(
  { loads, series }: { readonly loads: readonly number[]; readonly series: readonly number[] },
  { ones, design }: Design,
  length: number,
): Toes {
  const reach = STRETCHED * length;
  const edges = loads.map((load, i) => (ones[i] as number) * (1 + load / reach) ** -3);
  const together = (i: number, j: number) => {
    const distance = ((loads[i] as number) - (loads[j] as number)) / reach;
    return (edges[i] as number) * (edges[j] as number) * Math.exp(-0.5 * distance * distance);
  };
  const columns = fewColumns(loads.length, together, NEGLECTED);
  const places = design.slice(1).map((_, s) => [...series.keys()].filter((i) => series[i] === s));
  const within = (list: Float64Array) =>
    places.length === 1
      ? [list]
      : places.map((rows) => Float64Array.from(rows, (i) => list[i] as number));
  const parts = columns.map(within);
  const sharesOf = (list: Float64Array) =>
    within(list).map((part, s) =>
      Float64Array.from(parts, (column) => inner(column[s] as Float64Array, part)),
    );
  return {
    series,
    columns,
    products: places.map((_, s) => productsOf(parts.map((column) => column[s] as Float64Array))),
    sharesOf,
  };
}

/** The inner products of all columns, (r²). */
function productsOf(columns: readonly Float64Array[]): Float64Array {
  const size = columns.length;
  const products = new Float64Array(size * size);
  for (const [i, column] of columns.entries()) {
    for (let j = 0; j <= i; j += 1) {
      const product = inner(column, columns[j] as Float64Array);
      products[i * size + j] = product;
      products[j * size + i] = product;
    }
  }
  return products;
}
