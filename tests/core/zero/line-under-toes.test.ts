import { determinant, inverse, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { fitLine } from '../../../src/core/line.ts';
import { type KnownElongation, lineUnderToes } from '../../../src/core/zero/line-under-toes.ts';
import type { ToeVariances } from '../../../src/core/zero/toe-covariance.ts';
import { type Design, type Toes, toesOf } from '../../../src/core/zero/toes.ts';

const count = 40;
const loads = Array.from({ length: count }, (_, i) => (i + 1) / count);
const readings = loads.map(
  (load, i) => 3 + 60 * load + 8 * Math.exp(-load / 0.1) + Math.sin(9 * i),
);
const listsOf = (deviations: readonly number[]) => {
  const ones = Float64Array.from(deviations, (deviation) => 1 / deviation);
  const over = (list: readonly number[]) => ones.map((one, i) => one * (list[i] as number));
  return { ones, design: [ones, over(loads)], readings: over(readings) };
};
const series = loads.map(() => 0);
/** The lines through the readings of the lists. */
const fitted = (
  lists: Design & { readonly readings: Float64Array },
  toes: Toes,
  variances: ToeVariances,
  known?: KnownElongation,
) => lineUnderToes(lists, toes, variances, known)(lists.readings, toes.sharesOf(lists.readings));
const even = () => listsOf(loads.map(() => 1));

describe('lineUnderToes', () => {
  it('without height is least squares, and there is no toe', () => {
    const lists = even();
    const line = fitted(lists, toesOf({ loads, series }, lists, 1), { own: 0, shared: 0 });
    const plain = fitLine(loads, readings);
    expect(line.parameters[0]).toBeCloseTo(plain.intercept, 12);
    expect(line.parameters[1]).toBeCloseTo(plain.slope, 12);
    expect(line.squares).toBeCloseTo((count - 2) * plain.residualSd ** 2, 10);
    expect(line.logDeterminant).toBe(0);
    expect([...line.toe]).toEqual(loads.map(() => 0));
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
    const line = fitted(lists, toesOf({ loads, series }, lists, length), {
      own: 0,
      shared: height ** 2,
    });
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
    expect(line.parameters[0]).toBeCloseTo(theta.get(0, 0), 8);
    expect(line.parameters[1]).toBeCloseTo(theta.get(1, 0), 8);
    expect(line.squares / rest.dot(solved)).toBeCloseTo(1, 8);
    const spread = inverse(information);
    expect((line.variances[0] ?? 0) / spread.get(0, 0)).toBeCloseTo(1, 8);
    expect((line.variances[1] ?? 0) / spread.get(1, 1)).toBeCloseTo(1, 8);
    expect(line.logInformation).toBeCloseTo(Math.log(determinant(information)), 8);
    const noise = deviations.reduce((sum, deviation) => sum + 2 * Math.log(deviation), 0);
    expect(line.logDeterminant).toBeCloseTo(Math.log(determinant(v)) - noise, 8);
    const mean = toe.mmul(solved);
    expect([...line.toe].map((value, i) => value - mean.get(i, 0))).toEqual(
      loads.map(() => expect.closeTo(0, 8)),
    );
  });
});

// The same for three series, whose toes go together by a share, with a zero each and one elongation; and
// with one more row that says what the elongation is known to be from elsewhere.
describe('lineUnderToes of several series beside whole matrices', () => {
  const of = loads.map((_, i) => i % 3);
  const deviations = loads.map((_, i) => 1 + 0.3 * Math.cos(i));
  const ones = Float64Array.from(deviations, (deviation) => 1 / deviation);
  const over = (list: readonly number[]) => ones.map((one, i) => one * (list[i] as number));
  const starts = [0, 1, 2].map((place) => over(of.map((each) => Number(each === place))));
  const moved = readings.map((reading, i) => reading + 5 * (of[i] as number));
  const lists = { ones, design: [...starts, over(loads)], readings: over(moved) };
  const whole = (length: number, height: number, share: number, known?: [number, number]) => {
    const edge = (load: number) => height * (1 + load / (1.5 * length)) ** -3;
    const k = (i: number, j: number) => {
      const [a, b] = [loads[i] as number, loads[j] as number];
      const bell = Math.exp(-(((a - b) / (1.5 * length)) ** 2) / 2);
      return (of[i] === of[j] ? 1 : share) * edge(a) * edge(b) * bell;
    };
    const size = count + (known ? 1 : 0);
    const toe = new Matrix(
      Array.from({ length: size }, (_, i) =>
        Array.from({ length: size }, (_, j) => (i < count && j < count ? k(i, j) : 0)),
      ),
    );
    const variances = [...deviations.map((d) => d ** 2), ...(known ? [1 / known[1]] : [])];
    const v = Matrix.add(toe, Matrix.diag(variances));
    const rows = loads.map((load, i) => [...[0, 1, 2].map((s) => Number(of[i] === s)), load]);
    const design = new Matrix([...rows, ...(known ? [[0, 0, 0, 1]] : [])]);
    const y = Matrix.columnVector([...moved, ...(known ? [known[0]] : [])]);
    const pull = design.transpose().mmul(inverse(v));
    const information = pull.mmul(design);
    const theta = inverse(information).mmul(pull).mmul(y);
    const rest = Matrix.sub(y, design.mmul(theta));
    const solved = inverse(v).mmul(rest);
    const noise = variances.reduce((sum, variance) => sum + Math.log(variance), 0);
    return { theta, information, squares: rest.dot(solved), mean: toe.mmul(solved), v, noise };
  };
  it.each([
    [0.08, 10, 0, undefined],
    [0.13, 30, 0.5, undefined],
    [0.2, 3, 1, undefined],
    [0.13, 10, 0.5, [70, 0.04]],
  ] as const)(
    'is the same for %s, %s and a share of %s, knowing %j',
    (length, height, share, known) => {
      const other = whole(length, height, share, known && [...known]);
      const line = fitted(
        lists,
        toesOf({ loads, series: of }, lists, length),
        { own: (1 - share) * height ** 2, shared: share * height ** 2 },
        known && { elongation: known[0], weight: known[1] },
      );
      const spread = inverse(other.information);
      for (const i of [0, 1, 2, 3]) {
        expect(line.parameters[i]).toBeCloseTo(other.theta.get(i, 0), 8);
        expect((line.variances[i] ?? 0) / spread.get(i, i)).toBeCloseTo(1, 8);
      }
      expect(line.squares / other.squares).toBeCloseTo(1, 8);
      expect(line.logInformation).toBeCloseTo(Math.log(determinant(other.information)), 8);
      expect(line.logDeterminant).toBeCloseTo(Math.log(determinant(other.v)) - other.noise, 8);
      expect([...line.toe].map((value, i) => value - other.mean.get(i, 0))).toEqual(
        loads.map(() => expect.closeTo(0, 8)),
      );
    },
  );
});
