/** One verdict on a measurement: what it is called follows from the readings, and a rough one is wide enough. */
import { describe, expect, it } from 'vitest';
import { randomSource } from '../../../../src/core/random.ts';
import { emptyWorksheet } from '../../../../src/core/worksheet/empty.ts';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { worksheetMeasurement } from '../../../../src/core/worksheet/measure/measurement.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import {
  fullGrid,
  type TorqueCase,
  torqueCases,
  torqueReadings,
} from '../../../study/torque-cases.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millA, worksheetMills } from '../fixtures/mills.ts';

const verdictOf = (worksheet: Worksheet) => worksheetMeasurement(worksheet).verdict;

/** A sheet whose dial is as good as can be, so that its stress is as doubtful as its line; loads in N·m. */
function sheetOf(loads: readonly number[], shown: readonly number[]): Worksheet {
  const { rig, tensioner } = millA;
  return {
    ...emptyWorksheet,
    tensioner: { ...tensioner, dragTorque: 0, dragTorqueUncertainty: 0 },
    rig: { ...rig, gaugeLength: 0.7, graduation: 1e-6, readTo: 1e-6, dialRunsBackwards: false },
    readings: loads.map((load, i) => ({
      torque: 20 * load,
      dial: shown[i],
      wholeTurns: undefined,
      turns: undefined,
    })),
  };
}
const trueStress = (205e9 * 400e-6) / 0.7; // what every case of the study stretches to

/** Cases whose toe still has 5 % left at half of the load, or at seven tenths. */
const longToes = (firstLoad: number): readonly TorqueCase[] =>
  torqueCases({
    ...fullGrid,
    counts: [8, 12],
    noises: [5e-6, 12e-6],
    deadAt: [0.5, 0.7],
    firstLoad,
  });

describe('the verdict', () => {
  it.each(Object.entries(worksheetMills))('is good of mill %s', (_, mill) =>
    expect(verdictOf(mill)).toEqual({ grade: 'good', reasons: [] }),
  );

  it('waits while readings or boxes are missing, and says what is in the way', () => {
    expect(verdictOf(emptyWorksheet)).toEqual({ grade: 'waiting', reasons: [] });
    const few = { ...millA, readings: millA.readings.slice(0, 5) };
    expect(verdictOf(few)).toEqual({ grade: 'waiting', reasons: ['tooFewReadings'] });
    const rig = { ...millA.rig, gaugeLength: -1 };
    expect(verdictOf({ ...millA, rig })).toEqual({ grade: 'waiting', reasons: ['outOfRange'] });
  });

  it('is none where the readings give no stress', () => {
    const flat = millA.readings.map((reading, i) => ({ ...reading, dial: 0.3e-3 - 1e-6 * i }));
    const { verdict, measured, agreement } = evaluateWorksheet({ ...millA, readings: flat });
    expect(verdict).toEqual({ grade: 'none', reasons: ['zeroTooVague'] });
    expect([measured.ready, agreement.ready]).toEqual([false, false]);
    const rig = { ...millA.rig, dialRunsBackwards: false };
    expect(verdictOf({ ...millA, rig })).toEqual({ grade: 'none', reasons: ['readingFalls'] });
  });

  it('is rough of a series that starts above 30 % of the load, whether rows are gone or struck', () => {
    const high = ({ torque = 0 }: { readonly torque: number | undefined }) => torque > 6;
    const kept = millA.readings.filter(high);
    const struck = millA.readings.map((row) => (high(row) ? row : { ...row, struck: 'low' }));
    for (const readings of [kept, struck]) {
      const { grade, reasons } = verdictOf({ ...millA, readings });
      expect(grade).toBe('rough');
      expect(reasons).toContain('startsHigh');
    }
    const codes = evaluateWorksheet({ ...millA, readings: kept }).guards.map(({ code }) => code);
    expect(codes).toContain('startsHigh');
  });

  it('makes everything that hangs on a rough stress as wide', () => {
    const short = { ...millA, rig: { ...millA.rig, gaugeLength: 0.15 } };
    const wide = worksheetMeasurement({
      ...short,
      readings: millA.readings.filter((_, i) => i > 3),
    });
    expect(wide.verdict.grade).toBe('rough');
    const { stretch } = numbersOf(wide.inputs);
    const { standardUncertainty } = numbersOf(wide.zero).stretch;
    expect(stretch.standardDeviation / standardUncertainty).toBeCloseTo(1.25, 12);
  });
});

describe('a rough measurement', () => {
  it.each([0.02, 0.4])(
    'holds the truth in 93 % on long toes, started at %s of the load',
    (first) => {
      const held = longToes(first).flatMap((cell, place) => {
        const random = randomSource(900 + place);
        return [1, 2].flatMap(() => {
          const { verdict, measured } = worksheetMeasurement(
            sheetOf(cell.loads, torqueReadings(cell, random)),
          );
          if (verdict.grade !== 'rough' || !measured.ready) return [];
          return [measured.low <= trueStress && trueStress <= measured.high];
        });
      });
      expect(held.length).toBeGreaterThan(40);
      expect(held.filter(Boolean).length / held.length).toBeGreaterThanOrEqual(0.93);
    },
  );
});

describe('leaving out the low rows of a series that gives no stress', () => {
  it('never makes it good', () => {
    const grades = longToes(0.02).flatMap((cell, place) => {
      const shown = torqueReadings(cell, randomSource(300 + place));
      if (verdictOf(sheetOf(cell.loads, shown)).grade !== 'none') return [];
      const fewest = Array.from({ length: cell.count - 6 }, (_, i) => i + 1);
      return fewest.map(
        (gone) => verdictOf(sheetOf(cell.loads.slice(gone), shown.slice(gone))).grade,
      );
    });
    expect(grades).toContain('rough');
    expect(grades).not.toContain('good');
  });
});
