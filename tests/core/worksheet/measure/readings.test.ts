import { describe, expect, it } from 'vitest';
import type { WorksheetReading } from '../../../../src/core/worksheet/inputs.ts';
import { emptyReading } from '../../../../src/core/worksheet/inputs.ts';
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
