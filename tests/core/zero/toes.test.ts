import { describe, expect, it } from 'vitest';
import { inner } from '../../../src/core/statistics/matrix.ts';
import { toesOf } from '../../../src/core/zero/toes.ts';

const count = 40;
const loads = Array.from({ length: count }, (_, i) => (i + 1) / count);
const series = loads.map((_, i) => i % 2);
const ones = Float64Array.from(loads, (_, i) => 1 / (1 + 0.5 * Math.sin(i)));
const column = (keep: (i: number) => boolean) => ones.map((one, i) => (keep(i) ? one : 0));
const readings = ones.map((one, i) => one * Math.sin(9 * i));
const slope = ones.map((one, i) => one * (loads[i] as number));
const one = { ones, design: [ones, slope] };
const two = {
  ones,
  design: [column((i) => i % 2 === 0), column((i) => i % 2 === 1), slope],
};
const alone = loads.map(() => 0);

describe('toesOf', () => {
  it('needs few columns for many readings, and fewer for a longer toe', () => {
    const [short = 0, long = 0] = [0.05, 0.3].map(
      (length) => toesOf({ loads, series: alone }, one, length).columns.length,
    );
    expect(short).toBeLessThan(count);
    expect(long).toBeLessThan(short);
  });

  it('has columns whose sums of squares are the envelope (1 + x/1.5 l)⁻³ over each deviation', () => {
    const { columns } = toesOf({ loads, series: alone }, one, 0.1);
    for (const [i, load] of loads.entries()) {
      const edge = (ones[i] as number) * (1 + load / 0.15) ** -3;
      const squares = columns.reduce((sum, each) => sum + (each[i] as number) ** 2, 0);
      expect(squares).toBeCloseTo(edge ** 2, 12);
    }
  });

  it('takes the products of the columns series by series', () => {
    const { columns, products, sharesOf } = toesOf({ loads, series }, two, 0.1);
    const [a, b] = [columns[1], columns[3]] as [Float64Array, Float64Array];
    const at = 3 * columns.length + 1;
    const even = a.map((value, i) => (i % 2 === 0 ? value : 0));
    expect(products).toHaveLength(2);
    expect(products[0]?.[at]).toBeCloseTo(inner(even, b), 14);
    expect((products[0]?.[at] ?? 0) + (products[1]?.[at] ?? 0)).toBeCloseTo(inner(a, b), 14);
    expect(sharesOf(readings)[0]?.[1]).toBeCloseTo(inner(even, readings), 14);
    expect(sharesOf(two.design[1] as Float64Array)[0]?.[1]).toBe(0); // the second series has nothing in the first
    expect(sharesOf(slope)[0]?.[1]).toBeCloseTo(inner(even, slope), 14);
  });
});
