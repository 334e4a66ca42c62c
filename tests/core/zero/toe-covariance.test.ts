import { determinant, inverse, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { inner } from '../../../src/core/statistics/matrix.ts';
import { toeCovariance } from '../../../src/core/zero/toe-covariance.ts';

// Two series with two columns, written out whole: 1 + own·Cₛ·Cₛᵀ within each, + shared·C·Cᵀ over both.
const columns = [
  new Matrix([
    [1, 0.4],
    [0.5, -0.2],
    [0.1, 0.3],
  ]),
  new Matrix([
    [0.9, 0.1],
    [0.2, 0.6],
  ]),
];
const lists = [
  [1, 2, 3, -1, 4],
  [0, 1, -2, 5, 1],
] as const;
const rows = [
  [0, 1, 2],
  [3, 4],
];
const within = (list: readonly number[]) =>
  rows.map((places, s) => {
    const part = Matrix.columnVector(places.map((i) => list[i] as number));
    return Float64Array.from((columns[s] as Matrix).transpose().mmul(part).to1DArray());
  });
const products = columns.map((each) => Float64Array.from(each.transpose().mmul(each).to1DArray()));
function whole(own: number, shared: number) {
  const both = new Matrix(columns.flatMap((each) => each.to2DArray()));
  const toe = both.mmul(both.transpose()).mul(shared);
  for (const [s, places] of rows.entries()) {
    const alone = (columns[s] as Matrix).mmul((columns[s] as Matrix).transpose()).mul(own);
    for (const [a, i] of places.entries())
      for (const [b, j] of places.entries()) toe.set(i, j, toe.get(i, j) + alone.get(a, b));
  }
  return { toe, v: Matrix.add(toe, Matrix.eye(5)) };
}

describe('toeCovariance', () => {
  it.each([
    [0, 0],
    [2, 0],
    [0, 3],
    [2, 3],
  ])('is the whole matrix for an own variance of %s and a shared one of %s', (own, shared) => {
    const covariance = toeCovariance(products, 2, { own, shared });
    const { toe, v } = whole(own, shared);
    expect(covariance.logDeterminant).toBeCloseTo(Math.log(determinant(v)), 12);
    const [a, b] = lists.map((list) => Float64Array.from(list)) as [Float64Array, Float64Array];
    const [lowA, lowB] = lists.map((list) => covariance.lower(within(list))) as [
      Float64Array,
      Float64Array,
    ];
    const [left, right] = lists.map((list) => Matrix.columnVector([...list])) as [Matrix, Matrix];
    expect(inner(a, b) - inner(lowA, lowB)).toBeCloseTo(left.dot(inverse(v).mmul(right)), 12);
    const pulls = covariance.pulls(within(lists[0]));
    const mean = columns.flatMap((each, s) =>
      each.mmul(Matrix.columnVector([...(pulls[s] as Float64Array)])).to1DArray(),
    );
    const expected = toe.mmul(inverse(v)).mmul(left).to1DArray();
    expect(mean).toEqual(expected.map((value) => expect.closeTo(value, 12)));
  });
});
