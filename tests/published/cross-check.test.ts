/** Ours against independent libraries of general use: Student's t, least squares by QR, units. */
import tQuantileElsewhere from '@stdlib/stats-base-dists-t-quantile';
import fc from 'fast-check';
import { inverse, Matrix, QrDecomposition } from 'ml-matrix';
import unit from 'unitmath/es/UnitMath.js';
import { describe, expect, it } from 'vitest';
import { fitLine, fitLineBothErrors } from '../../src/core/line.ts';
import { tQuantile } from '../../src/core/student.ts';
import { siValue } from '../../src/units/conversions.ts';
import type { UnitSymbol } from '../../src/units/factors.ts';
import { UNITS } from '../../src/units/reading/table.ts';
import { numbersAt, publishedCases } from './cases.ts';

/** Least squares by QR: each row over its deviation; covariances not yet times the scatter. */
function byQr(x: readonly number[], y: readonly number[], sdY: readonly number[]) {
  const over = (values: readonly number[]) => values.map((value, i) => value / (sdY[i] as number));
  const [ones, slopes] = [over(x.map(() => 1)), over(x)];
  const design = new Matrix(x.map((_, i) => [ones[i] as number, slopes[i] as number]));
  const found = new QrDecomposition(design).solve(Matrix.columnVector(over(y)));
  const covariance = inverse(design.transpose().mmul(design));
  const residuals = Matrix.sub(Matrix.columnVector(over(y)), design.mmul(found));
  return {
    intercept: found.get(0, 0),
    slope: found.get(1, 0),
    varianceIntercept: covariance.get(0, 0),
    varianceSlope: covariance.get(1, 1),
    covariance: covariance.get(0, 1),
    squares: residuals.norm() ** 2,
  };
}

function near(ours: number, theirs: number, relative: number, scale = Math.abs(theirs)) {
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(relative * scale);
}

/** Readings about a line, as a loading series gives them: loads rise, scatter is small. */
const series = fc
  .array(
    fc.tuple(
      fc.double({ min: 0.5, max: 3, noNaN: true }),
      fc.double({ min: -1, max: 1, noNaN: true }),
    ),
    {
      minLength: 4,
      maxLength: 20,
    },
  )
  .map((steps) => {
    let x = 0;
    const xs = steps.map(([step]) => {
      x += step;
      return x;
    });
    return { x: xs, y: xs.map((each, i) => 5 - 3 * each + (steps[i]?.[1] ?? 0)) };
  });

describe('tQuantile', () => {
  it('is that of an independent library, over probabilities and degrees of freedom', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 1e-4, max: 0.9999, noNaN: true }),
        fc.double({ min: 1, max: 1000, noNaN: true }),
        (probability, degrees) => {
          const theirs = tQuantileElsewhere(probability, degrees);
          near(tQuantile(probability, degrees), theirs, 1e-11, Math.abs(theirs) + 1e-3);
        },
      ),
    ));
});

describe('fitLine', () => {
  function agreesWithQr(x: readonly number[], y: readonly number[], relative: number): void {
    const [ours, theirs] = [
      fitLine(x, y),
      byQr(
        x,
        y,
        x.map(() => 1),
      ),
    ];
    const scatter = Math.sqrt(theirs.squares / (x.length - 2));
    near(ours.intercept, theirs.intercept, relative, Math.abs(theirs.intercept) + 1);
    near(ours.slope, theirs.slope, relative);
    near(ours.residualSd, scatter, relative, scatter + 1e-4);
    near(ours.sdIntercept, scatter * Math.sqrt(theirs.varianceIntercept), relative, scatter + 1e-4);
    near(ours.sdSlope, scatter * Math.sqrt(theirs.varianceSlope), relative, scatter + 1e-4);
    near(ours.covariance, scatter ** 2 * theirs.covariance, relative, scatter ** 2 + 1e-4);
  }

  it('is least squares by QR, for series of many shapes', () =>
    fc.assert(
      fc.property(series, ({ x, y }) => {
        agreesWithQr(x, y, 1e-9);
      }),
    ));

  it("is least squares by QR on NIST's Norris data", () => {
    const norris = publishedCases.find(({ id }) => id === 'strd-norris');
    agreesWithQr(numbersAt(norris?.inputs, 'x'), numbersAt(norris?.inputs, 'y'), 1e-9);
  });
});

describe('fitLineBothErrors', () => {
  it('is weighted least squares by QR where x has next to no error', () =>
    fc.assert(
      fc.property(series, ({ x, y }) => {
        const sdY = x.map((_, i) => 0.5 + (i % 3));
        const ours = fitLineBothErrors({ x, y, sdX: x.map(() => 1e-7), sdY });
        const theirs = byQr(x, y, sdY);
        near(ours.intercept, theirs.intercept, 1e-9, Math.abs(theirs.intercept) + 1);
        near(ours.slope, theirs.slope, 1e-9);
        near(ours.sdIntercept, Math.sqrt(theirs.varianceIntercept), 1e-9);
        near(ours.sdSlope, Math.sqrt(theirs.varianceSlope), 1e-9);
        near(ours.covariance, theirs.covariance, 1e-9);
        near(ours.weightedResidualSum, theirs.squares, 1e-8, theirs.squares + 1e-3);
      }),
    ));
});

describe('units', () => {
  const names: readonly (readonly [UnitSymbol, string, string])[] = [
    ['psi', 'psi', 'Pa'],
    ['ft·lbf', 'ft lbf', 'N m'],
    ['lbf', 'lbf', 'N'],
    ['thou', 'mil', 'm'],
    ['hp', 'hp', 'W'],
  ];

  it.each(names)('%s is that of an independent library, for any amount', (symbol, name, base) =>
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e6, noNaN: true }), (amount) => {
        const theirs = unit(`${amount} ${name}`).to(base).value;
        near(siValue(amount, UNITS[symbol].factor), theirs, 4e-15);
      }),
    ),
  );
});
