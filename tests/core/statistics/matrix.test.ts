import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  decompose,
  inner,
  logDeterminant,
  solveLower,
  solveUpper,
} from '../../../src/core/statistics/matrix.ts';
import { evenly } from '../../evenly.ts';

// A = L·Lᵀ with L = [2 0 0; 6 1 0; −8 5 3], a worked case common in textbooks.
const worked = () => Float64Array.of(4, 12, -16, 12, 37, -43, -16, -43, 98);

describe('decompose', () => {
  it('gives the triangle of the textbook case', () => {
    const triangle = worked();
    decompose(triangle, 3);
    const [a, , , b, c, , d, e, f] = triangle;
    expect([a, b, c, d, e, f]).toEqual([2, 6, 1, -8, 5, 3]);
    expect(logDeterminant(triangle, 3)).toBeCloseTo(Math.log(36), 14);
  });
  it('refuses a matrix that is not positive definite', () =>
    expect(() => decompose(Float64Array.of(1, 2, 2, 1), 2)).toThrow(
      'matrix must be positive definite (row 1 was not)',
    ));
  it('refuses a singular matrix: two rows alike', () =>
    expect(() => decompose(Float64Array.of(1, 1, 1, 1), 2)).toThrow(
      'matrix must be positive definite (row 1 was not)',
    ));
});

describe('solveLower and solveUpper', () => {
  it('together undo the matrix', () =>
    fc.assert(
      fc.property(fc.array(evenly(-9, 9), { minLength: 3, maxLength: 3 }), (u) => {
        const matrix = worked();
        const image = [0, 3, 6].map((row) =>
          inner(matrix.slice(row, row + 3), Float64Array.from(u)),
        );
        decompose(matrix, 3);
        const back = solveUpper(matrix, solveLower(matrix, image));
        for (const [i, value] of u.entries()) expect(back[i]).toBeCloseTo(value, 9);
      }),
    ));
});
