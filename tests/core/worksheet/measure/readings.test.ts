import { describe, expect, it } from 'vitest';
import { emptyReading } from '../../../../src/core/worksheet/empty.ts';
import type { WorksheetReading } from '../../../../src/core/worksheet/inputs.ts';
import { worksheetRows, worksheetSeries } from '../../../../src/core/worksheet/measure/readings.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millA, millE } from '../fixtures/mills.ts';

const series = (readings: readonly WorksheetReading[], mill = millA) => {
  const worksheet = { ...mill, readings };
  return worksheetSeries(worksheet, worksheetRows(worksheet));
};

describe('worksheetSeries', () => {
  it('gives mill E its stretch since the first reading, worked by hand in thousandths of an inch', () => {
    const thousandths = [0, -0.3, 0.4, 1.2, 1.5, 2.2, 2.6, 3.0];
    const { elongations, topTorque } = numbersOf(series(millE.readings, millE));
    for (const [i, value] of elongations.entries())
      expect(value / 25.4e-6).toBeCloseTo(thousandths[i] as number, 9);
    expect(topTorque).toBe(9.49072564);
  });

  it('ignores empty rows and tells half-filled ones', () => {
    const [first, second, third] = millA.readings as [
      WorksheetReading,
      WorksheetReading,
      WorksheetReading,
    ];
    const rows = [emptyReading, first, { ...second, dial: undefined }, emptyReading, third];
    const found = numbersOf(series(rows));
    expect(found.rows).toEqual([1, 4]);
    expect(found.leftOut).toEqual([2]);
    expect(found.elongations[0]).toBe(0);
  });

  it('keeps the turns that are numbers', () => {
    const [first, second] = millA.readings as [WorksheetReading, WorksheetReading];
    const rows = [
      { ...first, turns: Number.NaN },
      { ...second, turns: 0 },
    ];
    expect(numbersOf(series(rows)).turns).toEqual([undefined, 0]);
  });

  it('waits for readings while there are none', () => {
    expect(series([])).toEqual({ ready: false, waitsFor: ['readings'] });
    expect(series([emptyReading])).toEqual({ ready: false, waitsFor: ['readings'] });
  });
});

// Two passes over mill A, each from its own first row; the second with the clamps set anew, 20 µm on.
describe('several series', () => {
  const again = millA.readings.map((row, i) => ({
    ...row,
    dial: (row.dial as number) - 20e-6,
    ...(i === 0 && { series: 2 }),
  }));
  const both = [...millA.readings, ...again];

  it('have their numbers from the row above, and begin with 1', () => {
    const found = numbersOf(series(both));
    expect(found.series).toEqual(both.map((_, i) => (i < millA.readings.length ? 1 : 2)));
  });

  it('are each counted from their own first row', () => {
    const { elongations } = numbersOf(series(both));
    const one = elongations.slice(0, millA.readings.length);
    for (const [i, value] of elongations.slice(millA.readings.length).entries())
      expect(value).toBeCloseTo(one[i] as number, 15);
  });

  it('go on where a number comes back', () => {
    const [a, b, c] = millA.readings as [WorksheetReading, WorksheetReading, WorksheetReading];
    const rows = [
      { ...a, series: 3 },
      { ...b, series: 1 },
      { ...c, series: 3 },
    ];
    const found = numbersOf(series(rows));
    expect(found.series).toEqual([3, 1, 3]);
    expect(found.elongations[1]).toBe(0);
    expect(found.elongations[2]).toBeCloseTo((a.dial as number) - (c.dial as number), 15);
  });

  it('leave out what is struck out, and count from the next row', () => {
    const [first, ...others] = millA.readings as [WorksheetReading, ...WorksheetReading[]];
    const found = numbersOf(series([{ ...first, struck: ' slipped ' }, ...others]));
    expect(found.struck).toEqual([0]);
    expect(found.leftOut).toEqual([]);
    expect(found.rows[0]).toBe(1);
    expect(found.elongations[0]).toBe(0);
    expect(numbersOf(series([{ ...first, struck: ' ' }, ...others])).struck).toEqual([]);
  });

  it('take a first row at no torque', () => {
    const slack = { ...emptyReading, torque: 0, dial: 0.4e-3 };
    const found = numbersOf(series([slack, ...millA.readings]));
    expect(found.torques[0]).toBe(0);
    expect(found.rows).toHaveLength(millA.readings.length + 1);
    expect(numbersOf(series([{ ...slack, torque: -1 }, ...millA.readings])).leftOut).toEqual([0]);
  });
});
