import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitLine, fitLineBothErrors } from '../../src/core/line.ts';
import { evenly } from '../evenly.ts';
import { pearson } from './fixtures/pearson.ts';

const number = evenly(-100, 100);

// GUM (JCGM 100:2008), H.3: correction b of a thermometer against temperature above 20 °C.
const temperature = [1.521, 2.012, 2.512, 3.003, 3.507, 3.999, 4.513, 5.002, 5.503, 6.01, 6.511];
const correction = [
  -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16,
];

describe('fitLine', () => {
  it('agrees with the calibration of a thermometer, GUM H.3', () => {
    const line = fitLine(temperature, correction);
    expect(line.intercept).toBeCloseTo(-0.1712, 4);
    expect(line.sdIntercept).toBeCloseTo(0.0029, 4);
    expect(line.slope).toBeCloseTo(0.00218, 5);
    expect(line.sdSlope).toBeCloseTo(0.00067, 5);
    expect(line.covariance / line.sdIntercept / line.sdSlope).toBeCloseTo(-0.93, 2);
    expect(line.residualSd).toBeCloseTo(0.0035, 4);
    expect(line.degreesOfFreedom).toBe(9);
  });
  it('finds a perfect line far from the origin', () => {
    const x = [0, 1, 2, 3].map((step) => 1e8 + step);
    const line = fitLine(
      x,
      x.map((value) => 2 * value),
    );
    expect(line.slope).toBe(2);
    expect(line.residualSd).toBe(0);
  });
  it('turns with the points: adding a + b·x adds a to the intercept and b to the slope', () =>
    fc.assert(
      fc.property(number, number, (a, b) => {
        const plain = fitLine(temperature, correction);
        const tilted = fitLine(
          temperature,
          correction.map((y, i) => y + a + b * (temperature[i] as number)),
        );
        expect(tilted.intercept).toBeCloseTo(plain.intercept + a, 9);
        expect(tilted.slope).toBeCloseTo(plain.slope + b, 9);
        expect(tilted.sdSlope).toBeCloseTo(plain.sdSlope, 9);
      }),
    ));
  it('refuses too few points, all at one x, unequal lists and what is not finite', () => {
    expect(() => fitLine([1, 2], [1, 2])).toThrow('number of points must be at least 3 (was 2)');
    expect(() => fitLine([1, 1, 1], [1, 2, 3])).toThrow('spread of x must be above 0 (was 0)');
    expect(() => fitLine([1, 2, 3], [1, 2])).toThrow('number of y must be 3 (was 2)');
    expect(() => fitLine([1, Number.NaN, 3], [1, 2, 3])).toThrow(/x\[1\] must be a finite number/);
  });
});

const { x, y, sdX, sdY } = pearson;

describe('fitLineBothErrors', () => {
  it('agrees with York et al. 2004, table II', () => {
    const line = fitLineBothErrors(pearson);
    expect(line.intercept).toBeCloseTo(5.479910224, 9);
    expect(line.slope).toBeCloseTo(-0.480533407, 9);
    expect(line.sdIntercept).toBeCloseTo(0.294970735, 8);
    expect(line.sdSlope).toBeCloseTo(0.057985009, 9);
    expect(line.weightedResidualSum / 8).toBeCloseTo(1.483294149, 8);
  });
  it('is the closed form of equal weights', () => {
    const ones = x.map(() => 1);
    const line = fitLineBothErrors({ x, y, sdX: ones, sdY: ones });
    expect(line.slope).toBeCloseTo(-0.5455611975209647, 12);
  });
  it('becomes least squares where x is exact', () => {
    const line = fitLineBothErrors({ x, y, sdX: x.map(() => 1e-9), sdY: x.map(() => 0.3) });
    const plain = fitLine(x, y);
    expect(line.slope).toBeCloseTo(plain.slope, 12);
    expect(line.intercept).toBeCloseTo(plain.intercept, 12);
    expect(line.sdSlope / 0.3).toBeCloseTo(plain.sdSlope / plain.residualSd, 9);
    expect(line.covariance / 0.09).toBeCloseTo(plain.covariance / plain.residualSd ** 2, 9);
  });
  it('does not mind which axis is which, correlated errors or not', () =>
    fc.assert(
      fc.property(evenly(-0.9, 0.9), (r) => {
        const correlation = x.map(() => r);
        const line = fitLineBothErrors({ ...pearson, correlation });
        const turned = fitLineBothErrors({ x: y, y: x, sdX: sdY, sdY: sdX, correlation });
        expect(turned.slope).toBeCloseTo(1 / line.slope, 9);
        expect(turned.weightedResidualSum).toBeCloseTo(line.weightedResidualSum, 8);
      }),
    ));
  it('refuses deviations not above 0, correlations of 1 and lists of other lengths', () => {
    const zeros = x.map(() => 0);
    expect(() => fitLineBothErrors({ ...pearson, sdX: zeros })).toThrow('sdX[0] must be above 0');
    expect(() => fitLineBothErrors({ ...pearson, sdY: zeros })).toThrow('sdY[0] must be above 0');
    expect(() => fitLineBothErrors({ ...pearson, correlation: x.map(() => 1) })).toThrow(
      'size of correlation[0] must be below 1 (was 1)',
    );
    for (const name of ['sdX', 'sdY', 'correlation'])
      expect(() => fitLineBothErrors({ ...pearson, [name]: [0.5] })).toThrow(
        `number of ${name} must be 10 (was 1)`,
      );
  });
});
