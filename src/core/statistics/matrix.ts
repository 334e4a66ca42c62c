/**
 * Cholesky's decomposition of a small symmetric matrix, and solving with its triangle.
 * Units: the caller's.
 * Source: Golub and Van Loan, Matrix Computations, 4.2 (4.2.8 with pivots), from memory.
 * Matrices are kept row after row in one list; only the lower triangle is read or written.
 */

/** Turns the matrix (size²) into its lower triangle L, with A = L·Lᵀ. @throws RangeError unless positive definite */
export function decompose(matrix: Float64Array, size: number): void {
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column <= row; column += 1) {
      let rest = matrix[row * size + column] as number;
      for (let k = 0; k < column; k += 1) {
        rest -= (matrix[row * size + k] as number) * (matrix[column * size + k] as number);
      }
      if (row > column) rest /= matrix[column * size + column] as number;
      else if (rest > 0) rest = Math.sqrt(rest);
      else throw new RangeError(`matrix must be positive definite (row ${row} was not)`);
      matrix[row * size + column] = rest;
    }
  }
}

/** The natural logarithm of the determinant of A = L·Lᵀ. */
export function logDeterminant(triangle: Float64Array, size: number): number {
  let total = 0;
  for (let row = 0; row < size; row += 1) total += Math.log(triangle[row * size + row] as number);
  return 2 * total;
}

/** The u of L·u = values, (n). */
export function solveLower(triangle: Float64Array, values: ArrayLike<number>): Float64Array {
  const solution = Float64Array.from(values);
  const size = solution.length;
  for (let row = 0; row < size; row += 1) {
    let rest = solution[row] as number;
    for (let k = 0; k < row; k += 1) {
      rest -= (triangle[row * size + k] as number) * (solution[k] as number);
    }
    solution[row] = rest / (triangle[row * size + row] as number);
  }
  return solution;
}

/** The u of Lᵀ·u = values, (n). */
export function solveUpper(triangle: Float64Array, values: ArrayLike<number>): Float64Array {
  const solution = Float64Array.from(values);
  const size = solution.length;
  for (let row = size - 1; row >= 0; row -= 1) {
    let rest = solution[row] as number;
    for (let k = row + 1; k < size; k += 1) {
      rest -= (triangle[k * size + row] as number) * (solution[k] as number);
    }
    solution[row] = rest / (triangle[row * size + row] as number);
  }
  return solution;
}

/**
 * Columns C (r of n) with A = C·Cᵀ of a symmetric, never negative matrix given by its entries: few
 * where it is smooth. What they leave out of each diagonal entry is at most `neglected`.
 */
export function fewColumns(
  size: number,
  entry: (row: number, column: number) => number,
  neglected: number,
): readonly Float64Array[] {
  const left = Float64Array.from({ length: size }, (_, i) => entry(i, i));
  const columns: Float64Array[] = [];
  while (columns.length < size) {
    const pivot = left.reduce((best, value, i) => (value > (left[best] as number) ? i : best), 0);
    const most = left[pivot] as number;
    if (most <= neglected) break;
    const column = new Float64Array(size);
    for (let i = 0; i < size; i += 1) column[i] = entry(i, pivot);
    for (const earlier of columns) {
      const share = earlier[pivot] as number;
      for (let i = 0; i < size; i += 1)
        column[i] = (column[i] as number) - share * (earlier[i] as number);
    }
    const root = Math.sqrt(most);
    for (let i = 0; i < size; i += 1) {
      column[i] = (column[i] as number) / root;
      left[i] = (left[i] as number) - (column[i] as number) ** 2;
    }
    left[pivot] = 0;
    columns.push(column);
  }
  return columns;
}

/** The inner product Σ aᵢ·bᵢ. */
export function inner(a: Float64Array, b: Float64Array): number {
  let total = 0;
  for (let i = 0; i < a.length; i += 1) total += (a[i] as number) * (b[i] as number);
  return total;
}
