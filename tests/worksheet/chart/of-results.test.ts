/** From a sheet's results to its chart: nothing invented, and what is drawn passes through what was found. */
import { describe, expect, it } from 'vitest';
import {
  emptyWorksheet,
  evaluateWorksheet,
  type Outcome,
  predictedCurve,
  type Ready,
} from '../../../src/core/worksheet.ts';
import { chartOf } from '../../../src/worksheet/chart/of-results.ts';
import { curveTorques } from '../../../src/worksheet/chart/torques.ts';
import { worksheetMills } from '../../core/worksheet/fixtures/mills.ts';
import { stretched } from '../../core/worksheet/fixtures/stretched.ts';

function known<T extends object>(outcome: Outcome<T>): Ready<T> {
  if (!outcome.ready) throw new Error('not ready');
  return outcome;
}

const results = () => evaluateWorksheet(worksheetMills.A);

describe('the torques of the prediction', () => {
  it('go evenly past the highest that is shown, and meet each reading', () => {
    const { points, setting } = results();
    const torques = curveTorques(results());
    const shown = [...known(points).points.map(({ torque }) => torque), known(setting).torque];
    expect(torques[0]).toBe(0);
    const [most, last] = [Math.max(...shown), torques.at(-1)];
    expect(last).toBeGreaterThanOrEqual(most);
    expect(last).toBeLessThanOrEqual(2 ** (1 / 8) * most);
    expect(torques).toEqual([...torques].sort((a, b) => a - b));
    expect(new Set(torques).size).toBe(torques.length);
    for (const { torque } of known(points).points) expect(torques).toContain(torque);
  });

  it('reach no further than nought on an empty sheet', () =>
    expect(curveTorques(evaluateWorksheet(emptyWorksheet))).toEqual([0]));
});

describe('the chart of a sheet', () => {
  it('shows its readings and its prediction as they are', () => {
    const curve = known(predictedCurve(worksheetMills.A, curveTorques(results()))).points;
    const chart = chartOf(results(), curve);
    expect(chart.curve).toBe(curve);
    expect(chart.readings).toEqual(known(results().points).points);
  });

  it('shows no setting while theory and measurement do not agree, and reaches no further for it', () => {
    const apart = evaluateWorksheet(stretched(worksheetMills.A, 0.4));
    expect(known(apart.setting).torque).toBeGreaterThan(2 * known(apart.measured).topTorque);
    expect(chartOf(apart, []).setting).toBeUndefined();
    expect(chartOf(results(), []).setting?.torque).toBe(known(results().setting).torque);
    expect(Math.max(...curveTorques(apart))).toBeLessThan(2 * known(apart.measured).topTorque);
  });

  it('draws the line from no stress at the drag to the stress at the top', () => {
    const { dragTorque, topTorque, stress } = known(results().measured);
    expect(chartOf(results(), []).lines?.whole).toEqual([
      { torque: dragTorque, stress: 0 },
      { torque: topTorque, stress },
    ]);
  });

  it('draws the line through both errors where its intercept and slope put it', () => {
    const { intercept, slope } = known(results().line);
    const ends = chartOf(results(), []).lines?.throughBothErrors ?? [];
    expect(ends).toHaveLength(2);
    for (const { torque, stress } of ends)
      expect(stress / (intercept + slope * torque)).toBeCloseTo(1, 12);
  });

  it('places the zero’s interval by the stress of the dial’s movement', () => {
    const { zero, low, high, stretch } = known(results().zero);
    const { stress } = known(results().measured);
    const shown = chartOf(results(), []).zero;
    expect((shown?.low ?? 0) / stress).toBeCloseTo((low - zero) / stretch.stretch, 12);
    expect((shown?.high ?? 0) / stress).toBeCloseTo((high - zero) / stretch.stretch, 12);
  });

  it('is empty for an empty sheet', () =>
    expect(chartOf(evaluateWorksheet(emptyWorksheet), [])).toEqual({ curve: [], readings: [] }));
});
