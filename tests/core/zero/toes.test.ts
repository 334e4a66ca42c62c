import { determinant, inverse, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { fitLine } from '../../../src/core/line.ts';
import { lineUnderToes, toesOf } from '../../../src/core/zero/toes.ts';

const count = 40;
const loads = Array.from({ length: count }, (_, i) => (i + 1) / count);
const readings = loads.map(
  (load, i) => 3 + 60 * load + 8 * Math.exp(-load / 0.1) + Math.sin(9 * i),
);
const listsOf = (deviations: readonly number[]) => {
  const ones = Float64Array.from(deviations, (deviation) => 1 / deviation);
  const over = (list: readonly number[]) => ones.map((one, i) => one * (list[i] as number));
  return { ones, loads: over(loads), readings: over(readings) };
};
const even = () => listsOf(loads.map(() => 1));

describe('lineUnderToes', () => {
  it('without height is least squares, and there is no toe', () => {
    const lists = even();
    const line = lineUnderToes(lists, toesOf(loads, lists, 1), 0);
    const plain = fitLine(loads, readings);
    expect(line.zero).toBeCloseTo(plain.intercept, 12);
    expect(line.elongation).toBeCloseTo(plain.slope, 12);
    expect(line.squares).toBeCloseTo((count - 2) * plain.residualSd ** 2, 10);
    expect(line.logDeterminant).toBe(0);
    expect([...line.toe]).toEqual(loads.map(() => 0));
  });

  it('needs few columns for many readings, and fewer for a longer toe', () => {
    const lists = even();
    const [short, long] = [0.05, 0.3].map((length) => toesOf(loads, lists, length).columns.length);
    expect(short).toBeLessThan(count);
    expect(long).toBeLessThan(short ?? 0);
  });
});

// V = K + diag(d²), K = h²·(1 + x/r)⁻³·(1 + x′/r)⁻³·exp(−(x − x′)²/2r²), r = 1.5 lengths, inverted outright.
describe('lineUnderToes beside whole matrices', () => {
  it.each([
    [0.03, 100],
    [0.13, 3],
    [0.3, 30],
  ])('is the same for a length of %s and a height of %s', (length, height) => {
    const deviations = loads.map((_, i) => 1 + 0.5 * Math.sin(i));
    const lists = listsOf(deviations);
    const line = lineUnderToes(lists, toesOf(loads, lists, length), height);
    const reach = 1.5 * length;
    const edge = (load: number) => height * (1 + load / reach) ** -3;
    const toe = new Matrix(
      loads.map((a) =>
        loads.map((b) => edge(a) * edge(b) * Math.exp(-(((a - b) / reach) ** 2) / 2)),
      ),
    );
    const v = Matrix.add(toe, Matrix.diag(deviations.map((deviation) => deviation ** 2)));
    const design = new Matrix(loads.map((load) => [1, load]));
    const pull = design.transpose().mmul(inverse(v));
    const information = pull.mmul(design);
    const y = Matrix.columnVector(readings);
    const theta = inverse(information).mmul(pull).mmul(y);
    const rest = Matrix.sub(y, design.mmul(theta));
    const solved = inverse(v).mmul(rest);
    expect(line.zero).toBeCloseTo(theta.get(0, 0), 8);
    expect(line.elongation).toBeCloseTo(theta.get(1, 0), 8);
    expect(line.squares / rest.dot(solved)).toBeCloseTo(1, 8);
    expect(line.b00 / information.get(0, 0)).toBeCloseTo(1, 8);
    expect(line.b11 / information.get(1, 1)).toBeCloseTo(1, 8);
    expect(line.determinant / determinant(information)).toBeCloseTo(1, 8);
    const noise = deviations.reduce((sum, deviation) => sum + 2 * Math.log(deviation), 0);
    expect(line.logDeterminant).toBeCloseTo(Math.log(determinant(v)) - noise, 8);
    const mean = toe.mmul(solved);
    expect([...line.toe].map((value, i) => value - mean.get(i, 0))).toEqual(
      loads.map(() => expect.closeTo(0, 8)),
    );
  });
});
