import { describe, expect, it } from 'vitest';
import type { MeasuredPoint, PointsResult } from '../../../../src/core/worksheet/measure/line.ts';
import { worksheetLine } from '../../../../src/core/worksheet/measure/line.ts';
import { worksheetMeasurement } from '../../../../src/core/worksheet/measure/measurement.ts';
import { ready } from '../../../../src/core/worksheet/outcome.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { worksheetMillResults } from '../fixtures/mill-results.ts';
import { millA, worksheetMills } from '../fixtures/mills.ts';

const pointsOfMillA = () => numbersOf(worksheetMeasurement(millA).points).points;
const lineOf = (result: PointsResult) => worksheetLine(ready(result));

describe('worksheetPoints', () => {
  it('puts the readings of mill A above its zero: (155 + 47.45) µm at the top, worked by hand', () => {
    const points = pointsOfMillA();
    const top = points.at(-1);
    expect(top?.stress).toBeCloseTo((205e9 * 202.453e-6) / (0.4 * 0.99822), -3);
    expect(top).toMatchObject({ row: 9, torque: 14.5, turns: 0.486111111, inToe: false });
    expect(top?.sdTorque).toBeCloseTo(0.145, 12);
    expect(points[0]).toMatchObject({ row: 0, inToe: true, sdTorque: 0.1 });
  });
});

describe('worksheetLine', () => {
  it.each(['A', 'B', 'C', 'E', 'F'] as const)('crosses mill %s where other code does', (letter) => {
    const expected = worksheetMillResults[letter];
    const mill = worksheetMills[letter];
    // The other code counts stress from the first reading, this one from the zero; a strip up to 3° off reads short.
    const perStretch =
      205e9 / ((mill.rig.gaugeLength ?? 0) * (1 - 0.65 * Math.sin(Math.PI / 60) ** 2));
    const shift = perStretch * expected.zero;
    const { intercept } = numbersOf(worksheetMeasurement(mill).line);
    expect((intercept + shift) / expected.lineIntercept).toBeCloseTo(1, 6);
  });

  it('widens its uncertainties where the scatter is more than the errors explain, and says so', () => {
    const points = pointsOfMillA();
    const scattered = points.map((point, i) => ({
      ...point,
      stress: point.stress + (i % 2) * 20e6,
    }));
    const line = numbersOf(lineOf({ points: scattered }));
    expect(line.rescaled).toBe(true);
    expect(line.meanSquare).toBeGreaterThan(1.5);
    const steady = numbersOf(lineOf({ points }));
    expect(steady.rescaled).toBe(false);
    expect(line.sdSlope / steady.sdSlope).toBeCloseTo(Math.sqrt(line.meanSquare), 0);
  });

  it('refuses fewer than three torques out of the toe', () => {
    const points = pointsOfMillA().map((point, row) => ({ ...point, inToe: row < 8 }));
    expect(lineOf({ points })).toEqual({
      ready: false,
      waitsFor: ['readings'],
      refusal: { code: 'tooFewStraight', values: { levels: 2 } },
    });
  });

  it('counts torques and not readings: three are enough, a repeat of one of two is not', () => {
    const [first, second, third] = pointsOfMillA().slice(-3) as [
      MeasuredPoint,
      MeasuredPoint,
      MeasuredPoint,
    ];
    expect(numbersOf(lineOf({ points: [first, second, third] })).readingsUsed).toBe(3);
    const repeated = lineOf({ points: [first, second, { ...third, torque: second.torque }] });
    expect(repeated).toMatchObject({ refusal: { code: 'tooFewStraight', values: { levels: 2 } } });
  });

  it('refuses readings whose errors are as large as the picture: no slope settles', () => {
    const [point] = pointsOfMillA() as [MeasuredPoint];
    const vague = [
      { torque: 1, stress: 3, sdTorque: 1, sdStress: 10 },
      { torque: 2, stress: 1, sdTorque: 1, sdStress: 3 },
      { torque: 3, stress: 3, sdTorque: 7, sdStress: 1 },
    ].map((values) => ({ ...point, ...values, inToe: false }));
    expect(lineOf({ points: vague })).toEqual({
      ready: false,
      waitsFor: ['readings'],
      refusal: { code: 'noLine', values: {} },
    });
  });
});
