import { describe, expect, it } from 'vitest';
import { randomSource } from '../../../../src/core/random.ts';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { worksheetRows, worksheetSeries } from '../../../../src/core/worksheet/measure/readings.ts';
import { worksheetZero } from '../../../../src/core/worksheet/measure/zero.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { worksheetMillResults } from '../fixtures/mill-results.ts';
import { millA } from '../fixtures/mills.ts';

const zeroOf = (worksheet: Worksheet) =>
  worksheetZero(worksheet, worksheetSeries(worksheet, worksheetRows(worksheet)));
const straight = (perTorque: number, shift = (_: number) => 0): Worksheet => ({
  ...millA,
  rig: { ...millA.rig, dialRunsBackwards: false },
  readings: millA.readings.map((reading) => {
    const torque = reading.torque as number;
    return { ...reading, dial: perTorque * (torque - 0.8) + shift(torque) };
  }),
});

describe('worksheetZero', () => {
  it('finds mill A as other code does', () => {
    const { zero, stretch, belowDrag } = numbersOf(zeroOf(millA));
    expect(zero / worksheetMillResults.A.zero).toBeCloseTo(1, 6);
    expect(stretch.stretch / worksheetMillResults.A.stretch).toBeCloseTo(1, 6);
    expect(belowDrag).toEqual([]);
  });

  it('puts the zero of a straight series at the drag torque', () => {
    const { zero, stretch } = numbersOf(zeroOf(straight(15e-6)));
    expect(zero).toBeCloseTo(-15e-6 * 0.7, 9); // the first reading is 0.7 N·m above the drag
    expect(stretch.stretch).toBeCloseTo(15e-6 * 13.7, 9);
  });

  it('takes out what the weight of the bar did to a straight series', () => {
    const sagging = straight(15e-6, (torque) => -2e-6 / Math.max((torque - 0.8) / 13.7, 0.1));
    const rig = { ...sagging.rig, barHeight: 0.0128, barWeight: 1 };
    const corrected = numbersOf(zeroOf({ ...sagging, rig }));
    expect(corrected.barShiftAtTop).toBeGreaterThan(1.9e-6);
    expect(corrected.barShiftAtTop).toBeLessThan(2.1e-6);
    expect(corrected.stretch.stretch).toBeCloseTo(15e-6 * 13.7, 6);
  });

  it('leaves out the rows that only turn the empty screw, and says which', () => {
    const tensioner = { ...millA.tensioner, dragTorque: 3.2 };
    const { belowDrag, rows } = numbersOf(zeroOf({ ...millA, tensioner }));
    expect(belowDrag).toEqual([0, 1]);
    expect(rows).toEqual([2, 3, 4, 5, 6, 7, 8, 9]);
  });

  it('wants six different torques: repeats count once', () => {
    const five = millA.readings.slice(5);
    const tooFew = {
      ready: false,
      waitsFor: ['readings'],
      refusal: { code: 'tooFewReadings', values: { levels: 5 } },
    };
    expect(zeroOf({ ...millA, readings: five })).toEqual(tooFew);
    expect(zeroOf({ ...millA, readings: [...five, ...five] })).toEqual(tooFew);
    expect(zeroOf({ ...millA, readings: millA.readings.slice(4) }).ready).toBe(true);
    // 3.0 N·m is the second torque: at the drag it only turns the empty screw, as below it.
    const tensioner = { ...millA.tensioner, dragTorque: 3 };
    const sevenOfWhichTwoBelow = millA.readings.slice(0, 7);
    expect(zeroOf({ ...millA, tensioner, readings: sevenOfWhichTwoBelow })).toEqual(tooFew);
  });

  it('refuses readings that fall with torque', () =>
    expect(zeroOf(straight(-15e-6))).toEqual({
      ready: false,
      waitsFor: ['readings', 'rig.dialRunsBackwards'],
      refusal: { code: 'readingFalls', values: {} },
    }));

  it('takes a drag torque that is not known for a twentieth of the top torque: 0.725 of 14.5 N·m', () => {
    const tensioner = { ...millA.tensioner, dragTorque: undefined };
    const zero = numbersOf(zeroOf({ ...millA, tensioner }));
    expect(zero.dragTorque).toBeCloseTo(0.725, 12);
    expect(zero.stretch.stretch).toBeGreaterThan(0);
  });
});

describe('the zero of several series', () => {
  const moved = (by: number, series: number) =>
    millA.readings.map((row) => ({ ...row, dial: (row.dial as number) - by, series }));
  const three = { ...millA, readings: [...moved(0, 1), ...moved(30e-6, 2), ...moved(-10e-6, 3)] };

  it('is one for each, and the last of them stands before all', () => {
    const found = numbersOf(zeroOf(three));
    expect(found.zeros.map(({ series }) => series)).toEqual([1, 2, 3]);
    expect(found.zero).toBe(found.zeros[2]?.zero);
    expect(found.series).toHaveLength(found.rows.length);
    for (const { zero } of found.zeros) expect(zero).toBeCloseTo(found.zero, 12);
  });

  it('makes the stretch surer than one series does, the noise of each being its own', () => {
    const { normal } = randomSource(4);
    const sheet = straight(15e-6, (torque) => -60e-6 * Math.exp(-torque / 1.5));
    const noisy = (series: number) =>
      sheet.readings.map((row) => ({
        ...row,
        dial: (row.dial as number) + 4e-6 * normal(),
        series,
      }));
    const [one, two, last] = [noisy(1), noisy(2), noisy(3)];
    const stretchOf = (readings: Worksheet['readings']) =>
      numbersOf(zeroOf({ ...sheet, readings })).stretch;
    const joined = stretchOf([one, two, last].flat());
    expect(joined.standardUncertainty).toBeLessThan(0.8 * stretchOf(one).standardUncertainty);
    expect(joined.low).toBeLessThan(15e-6 * 13.7);
    expect(joined.high).toBeGreaterThan(15e-6 * 13.7);
  });

  it('says how many are in the upper half where only these are too few', () => {
    const slip = millA.readings.map((reading, row) =>
      row === 7 ? { ...reading, torque: 305 } : reading,
    );
    const { dragTorque = 0 } = millA.tensioner;
    expect(zeroOf({ ...millA, readings: slip })).toMatchObject({
      refusal: {
        code: 'tooFewReadings',
        values: { levels: 10, count: 1, low: (305 + dragTorque) / 2, torque: 305 },
      },
    });
  });

  it('needs one series that is long enough by itself', () => {
    const parts = [moved(0, 1).slice(0, 5), moved(0, 2).slice(5)].flat();
    expect(zeroOf({ ...millA, readings: parts })).toMatchObject({
      refusal: { code: 'tooFewReadings', values: { levels: 5 } },
    });
    const short = { ...millA, readings: [...moved(0, 1), ...moved(30e-6, 2).slice(7)] };
    expect(numbersOf(zeroOf(short)).zeros).toHaveLength(2);
  });

  it('is left out of a series that has nothing above the drag', () => {
    const slack = [0, 0.4].map((torque) => ({ ...millA.readings[0], torque, series: 2 }));
    const found = numbersOf(zeroOf({ ...millA, readings: [...moved(0, 1), ...slack] as never }));
    expect(found.zeros.map(({ series }) => series)).toEqual([1]);
    expect(found.withoutTorque).toEqual([10]);
    expect(found.belowDrag).toEqual([11]);
  });
});
