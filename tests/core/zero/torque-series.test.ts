import { describe, expect, it } from 'vitest';
import {
  assertLongEnough,
  isLongEnough,
  loadedReadings,
} from '../../../src/core/zero/torque-series.ts';

const series = {
  torques: [1, 2, 4, 6, 8, 10, 12],
  readings: [0, 1, 2, 3, 4, 5, 6].map((step) => step * 1e-5),
  dragTorque: 2,
};

describe('loadedReadings', () => {
  it('leaves out what does not exceed the drag torque and writes loads as shares', () => {
    const { kept, loads, readings, range } = loadedReadings(series);
    expect(kept).toEqual([2, 3, 4, 5, 6]);
    expect(loads).toEqual([0.2, 0.4, 0.6, 0.8, 1]);
    expect(readings[0]).toBe(2e-5);
    expect(range).toBe(10);
  });
  it('refuses lists of other lengths, a drag torque below 0 and what is not finite', () => {
    expect(() => loadedReadings({ ...series, readings: [0] })).toThrow(
      'number of readings must be 7',
    );
    expect(() => loadedReadings({ ...series, dragTorque: -1 })).toThrow(
      'dragTorque must be at least 0 N·m (was -1)',
    );
    const broken = [0, 0, 0, 0, 0, 0, Number.NaN];
    expect(() => loadedReadings({ ...series, torques: broken })).toThrow(
      'torques[6] must be a finite number of N·m (was NaN)',
    );
    expect(() => loadedReadings({ ...series, readings: broken })).toThrow(
      /^readings\[6\] must be a finite number of m \(was NaN\)$/,
    );
  });
});

describe('isLongEnough and assertLongEnough', () => {
  const judged = (torques: number[]) => {
    const tried = { torques, readings: torques.map(() => 0), dragTorque: 0 };
    const passes = isLongEnough(tried);
    const check = () => assertLongEnough(loadedReadings(tried));
    return { passes, check };
  };
  it('agree on 6 readings with 3 in the upper half', () => {
    const { passes, check } = judged([1, 2, 3, 8, 9, 10]);
    expect(passes).toBe(true);
    expect(check).not.toThrow();
  });
  it('count a reading at half of the top load as one of the upper half', () => {
    const { passes, check } = judged([1, 2, 3, 5, 9, 10]);
    expect(passes).toBe(true);
    expect(check).not.toThrow();
  });
  it.each([
    ['above the drag torque must be at least 6 (was 5)', [1, 5, 8, 9, 10]],
    ['in the upper half must be at least 3 (was 2)', [1, 2, 3, 4, 9, 10]],
    ['spread of the loads must be above 0 (was 0)', [5, 5, 5, 5, 5, 5]],
  ])('agree on a series that is not: %s', (message, torques) => {
    const { passes, check } = judged(torques);
    expect(passes).toBe(false);
    expect(check).toThrow(message);
  });
});
