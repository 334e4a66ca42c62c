/**
 * How the toes of several series go together: each has one of its own, and all share one that comes
 * back. What readings say of both is worked out series by series, so it takes as long as they are many.
 * Units: none; everything is in squares of the repeatability.
 * Source: block elimination (Golub and Van Loan, Matrix Computations, 4.5, from memory), written out here.
 */
import { decompose, inner, logDeterminant, solveLower, solveUpper } from '../statistics/matrix.ts';

/** Variance of the toes: of each series' own, and of the one they share. */
export interface ToeVariances {
  readonly own: number;
  readonly shared: number;
}

/** The covariance 1 + own·Cₛ·Cₛᵀ within a series s, + shared·C·Cᵀ over all; `shares` are Cₛᵀ times a list, for each series. */
export interface ToeCovariance {
  readonly logDeterminant: number;
  /** A list whose inner products are what the toes take from those of the lists. */
  readonly lower: (shares: readonly Float64Array[]) => Float64Array;
  /** The mean toe of what is left as a sum of columns, for each series. */
  readonly pulls: (shares: readonly Float64Array[]) => readonly Float64Array[];
}

/** The triangle of 1 + variance·products. */
function triangleOf(products: Float64Array, size: number, variance: number): Float64Array {
  const triangle = products.map((product) => variance * product);
  for (let i = 0; i < size; i += 1) triangle[i * size + i] = 1 + (triangle[i * size + i] as number);
  decompose(triangle, size);
  return triangle;
}

const solved = (triangle: Float64Array, values: Float64Array): Float64Array =>
  solveUpper(triangle, solveLower(triangle, values));

/** (1 + own·P)⁻¹·P, row by row: products of the columns once a series' own toe is allowed for. */
function remaining(triangle: Float64Array, products: Float64Array, size: number): Float64Array {
  const rows = new Float64Array(size * size);
  for (let row = 0; row < size; row += 1)
    rows.set(solved(triangle, products.subarray(row * size, (row + 1) * size)), row * size);
  return rows;
}

/** Adds a multiple of one list to another, which it changes. */
function add(to: Float64Array, factor: number, list: Float64Array): void {
  for (let i = 0; i < to.length; i += 1) to[i] = (to[i] as number) + factor * (list[i] as number);
}

function times(matrix: Float64Array, list: Float64Array): Float64Array {
  const size = list.length;
  return list.map((_, row) => inner(matrix.subarray(row * size, (row + 1) * size), list));
}

function total(lists: readonly Float64Array[], size: number): Float64Array {
  const sum = new Float64Array(size);
  for (const list of lists) add(sum, 1, list);
  return sum;
}

/** All lists behind each other, each times its factor. */
function joined(lists: readonly (readonly [Float64Array, number])[], size: number): Float64Array {
  const all = new Float64Array(size * lists.length);
  for (const [at, [list, factor]] of lists.entries())
    add(all.subarray(at * size, (at + 1) * size), factor, list);
  return all;
}

/** The covariance from the inner products Cₛᵀ·Cₛ of the columns in each series, (size²) and whole. */
export function toeCovariance(
  products: readonly Float64Array[],
  size: number,
  { own, shared }: ToeVariances,
): ToeCovariance {
  // Without own toes, or without a shared one, there is nothing to eliminate.
  const triangles = own === 0 ? [] : products.map((each) => triangleOf(each, size, own));
  const left =
    shared === 0
      ? []
      : products.map((each, s) => (triangles[s] ? remaining(triangles[s], each, size) : each));
  const common = shared === 0 ? undefined : triangleOf(total(left, size * size), size, shared);
  const through = (
    solve: (triangle: Float64Array, values: Float64Array) => Float64Array,
    lists: readonly Float64Array[],
  ) => lists.map((list, s) => (triangles[s] ? solve(triangles[s], list) : list));
  return {
    logDeterminant: [...triangles, ...(common ? [common] : [])].reduce(
      (sum, each) => sum + logDeterminant(each, size),
      0,
    ),
    lower: (shares) => {
      const each = through(solveLower, shares);
      const parts = triangles.map((_, s) => [each[s] as Float64Array, Math.sqrt(own)] as const);
      if (!common) return joined(parts, size);
      const all = solveLower(common, total(through(solveUpper, each), size));
      return joined([...parts, [all, Math.sqrt(shared)]], size);
    },
    pulls: (shares) => {
      const each = through(solved, shares);
      if (!common) return each.map((pull) => pull.map((value) => own * value));
      const all = solved(common, total(each, size));
      return each.map((pull, s) => {
        const sum = all.map((value) => shared * value);
        add(sum, own, pull);
        if (own > 0) add(sum, -own * shared, times(left[s] as Float64Array, all));
        return sum;
      });
    },
  };
}
