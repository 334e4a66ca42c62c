import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  decompose,
  fewColumns,
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

describe('fewColumns', () => {
  const sumOf = (columns: readonly Float64Array[], i: number, j: number) =>
    columns.reduce((sum, column) => sum + (column[i] as number) * (column[j] as number), 0);

  it('gives the textbook matrix back, with as many columns as it has rows', () => {
    const matrix = worked();
    const columns = fewColumns(3, (i, j) => matrix[3 * i + j] as number, 1e-12);
    expect(columns).toHaveLength(3);
    for (const i of [0, 1, 2])
      for (const j of [0, 1, 2])
        expect(sumOf(columns, i, j)).toBeCloseTo(matrix[3 * i + j] as number, 10);
  });

  it('starts at the largest diagonal entry: that column alone is exact', () => {
    const matrix = worked();
    const [first] = fewColumns(3, (i, j) => matrix[3 * i + j] as number, 1e-12);
    expect([...(first ?? [])].map((value) => value * Math.sqrt(98))).toEqual([
      expect.closeTo(-16, 12),
      expect.closeTo(-43, 12),
      expect.closeTo(98, 12),
    ]);
  });

  it('needs one column for a product of a list with itself', () => {
    const list = [1, -2, 3];
    const columns = fewColumns(3, (i, j) => (list[i] as number) * (list[j] as number), 1e-12);
    expect(columns).toHaveLength(1);
    expect(fewColumns(3, () => 0, 1e-12)).toEqual([]);
  });

  it('leaves out of a smooth matrix no more than it may', () => {
    const near = (i: number, j: number) => Math.exp(-((i - j) ** 2) / 800);
    const columns = fewColumns(100, near, 1e-6);
    expect(columns.length).toBeLessThan(20);
    for (let i = 0; i < 100; i += 1) {
      const left = 1 - sumOf(columns, i, i);
      expect(left).toBeGreaterThan(-1e-12);
      expect(left).toBeLessThanOrEqual(1e-6);
    }
    const coarser = fewColumns(100, near, 1e-3);
    expect(coarser.length).toBeLessThan(columns.length);
    expect(columns.slice(0, coarser.length)).toEqual(coarser);
  });

  it('stops at just what may be left out', () =>
    expect(fewColumns(2, (i, j) => (i === j ? ([4, 1][i] as number) : 0), 1)).toHaveLength(1));
});
