/**
 * Cholesky's decomposition of a small symmetric matrix, and solving with its triangle.
 * Units: the caller's.
 * Source: Golub and Van Loan, Matrix Computations, 4.2, from memory.
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

/** The inner product Σ aᵢ·bᵢ. */
export function inner(a: Float64Array, b: Float64Array): number {
  let total = 0;
  for (let i = 0; i < a.length; i += 1) total += (a[i] as number) * (b[i] as number);
  return total;
}
