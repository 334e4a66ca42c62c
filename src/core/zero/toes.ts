/**
 * A straight line under toes of one length: smooth curves that die with load. Such curves are sums
 * of few columns, which makes hundreds of readings as quick as dozens.
 * Units: load as a share of the top load; readings in m; lists (n) are over the standard deviation of their reading.
 * Source: Gaussian-process regression with explicit basis functions, Rasmussen and Williams (2006),
 * 2.7 and 8.1 (few columns), from memory; the family of envelopes is derived here.
 */
import {
  decompose,
  fewColumns,
  inner,
  logDeterminant,
  solveLower,
  solveUpper,
} from '../statistics/matrix.ts';

const STRETCHED = 1.5; // the envelope and the correlation reach this many lengths
const NEGLECTED = 1e-15; // variance that the columns leave out of a toe of height 1, in squares of the repeatability

/** What a line is laid through: the constant, the loads and the readings. */
export interface Lists {
  readonly ones: Float64Array;
  readonly loads: Float64Array;
  readonly readings: Float64Array;
}

/** All toes of one length and of height 1: the columns C whose sums they are, and their inner products. */
export interface Toes {
  readonly columns: readonly Float64Array[]; // r of n
  readonly products: Float64Array; // CᵀC, (r²)
  readonly shares: Lists; // Cᵀ times each list, (r)
}

/** The line y = zero + elongation·load under toes of one height, by generalised least squares. */
export interface LineUnderToes {
  readonly zero: number;
  readonly elongation: number;
  readonly squares: number; // of what is left, over its covariance
  readonly b00: number; // of the information matrix, whose determinant is b00·b11 − b01²
  readonly b11: number;
  readonly determinant: number;
  readonly logDeterminant: number; // of the covariance of the lists
  readonly toe: Float64Array; // m, one for each reading
}

const mapped = (lists: Lists, change: (list: Float64Array) => Float64Array): Lists => ({
  ones: change(lists.ones),
  loads: change(lists.loads),
  readings: change(lists.readings),
});

/** Toes under an envelope that dies with load, whose values at near loads go together. */
export function toesOf(loads: readonly number[], lists: Lists, length: number): Toes {
  const reach = STRETCHED * length;
  const edges = loads.map((load, i) => (lists.ones[i] as number) * (1 + load / reach) ** -3);
  const together = (i: number, j: number) => {
    const distance = ((loads[i] as number) - (loads[j] as number)) / reach;
    return (edges[i] as number) * (edges[j] as number) * Math.exp(-0.5 * distance * distance);
  };
  const columns = fewColumns(loads.length, together, NEGLECTED);
  const products = new Float64Array(columns.length ** 2);
  for (const [i, column] of columns.entries()) {
    for (let j = 0; j <= i; j += 1)
      products[i * columns.length + j] = inner(column, columns[j] as Float64Array);
  }
  const shares = mapped(lists, (list) => Float64Array.from(columns, (one) => inner(one, list)));
  return { columns, products, shares };
}

/** The triangle of 1 + height²·CᵀC, which is what the covariance 1 + height²·C·Cᵀ is to the columns. */
function triangleUnder({ columns, products }: Toes, height: number): Float64Array {
  const size = columns.length;
  const triangle = products.map((product) => height * height * product);
  for (let i = 0; i < size; i += 1) triangle[i * size + i] = 1 + (triangle[i * size + i] as number);
  decompose(triangle, size);
  return triangle;
}

/** The mean toe height²·C·(1 + height²·CᵀC)⁻¹·Cᵀ·(y − X·θ), m. */
function meanToe({ ones }: Lists, { columns }: Toes, pulls: Float64Array, height: number) {
  const toe = new Float64Array(ones.length);
  for (const [k, column] of columns.entries()) {
    const pull = height * height * (pulls[k] as number);
    for (let i = 0; i < toe.length; i += 1)
      toe[i] = (toe[i] as number) + pull * (column[i] as number);
  }
  return toe.map((value, i) => value / (ones[i] as number));
}

/** The line through the lists under toes of a height in repeatabilities; without height, plain least squares. */
export function lineUnderToes(lists: Lists, toes: Toes, height: number): LineUnderToes {
  const triangle = triangleUnder(toes, height);
  const lower = mapped(toes.shares, (share) => solveLower(triangle, share));
  const product = (a: keyof Lists, b: keyof Lists) =>
    inner(lists[a], lists[b]) - height * height * inner(lower[a], lower[b]);
  const b00 = product('ones', 'ones');
  const b01 = product('ones', 'loads');
  const b11 = product('loads', 'loads');
  const [r0, r1] = [product('ones', 'readings'), product('loads', 'readings')];
  const determinant = b00 * b11 - b01 * b01;
  const zero = (b11 * r0 - b01 * r1) / determinant;
  const elongation = (b00 * r1 - b01 * r0) / determinant;
  const left = ({ ones, loads, readings }: Lists) =>
    readings.map((y, i) => y - zero * (ones[i] as number) - elongation * (loads[i] as number));
  const [rest, pulls] = [left(lists), left(lower)];
  return {
    zero,
    elongation,
    squares: inner(rest, rest) - height * height * inner(pulls, pulls),
    b00,
    b11,
    determinant,
    logDeterminant: logDeterminant(triangle, toes.columns.length),
    toe: meanToe(lists, toes, solveUpper(triangle, pulls), height),
  };
}
