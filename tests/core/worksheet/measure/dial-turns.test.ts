import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { WorksheetReading } from '../../../../src/core/worksheet/inputs.ts';
import { missedTurns } from '../../../../src/core/worksheet/measure/dial-turns.ts';
import { worksheetRows, worksheetSeries } from '../../../../src/core/worksheet/measure/readings.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millE, worksheetMills } from '../fixtures/mills.ts';

const missed = (
  mill: typeof millE,
  change: (reading: WorksheetReading, row: number) => WorksheetReading,
) => {
  const worksheet = { ...mill, readings: mill.readings.map(change) };
  const series = numbersOf(worksheetSeries(worksheet, worksheetRows(worksheet)));
  return missedTurns(series, mill.rig.travelPerTurn);
};
const same = (reading: WorksheetReading) => reading;

describe('missedTurns', () => {
  it.each(Object.entries(worksheetMills))('has nothing to say of mill %s', (_, mill) =>
    expect(missed(mill, same)).toEqual([]),
  );

  it('finds the turn that mill E would miss at its last row', () =>
    expect(missed(millE, (reading) => ({ ...reading, wholeTurns: 0 }))).toEqual([
      { row: 7, turns: 1, isAlone: false },
    ]));

  it('finds a turn too many anywhere, for one row or from there on', () =>
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 6 }), (wrong) => {
        const one = missed(millE, (reading, row) =>
          row === wrong ? { ...reading, wholeTurns: 1 } : reading,
        );
        expect(one).toEqual([{ row: wrong, turns: -1, isAlone: true }]);
        const on = missed(millE, (reading, row) =>
          row >= wrong ? { ...reading, wholeTurns: (reading.wholeTurns ?? 0) + 1 } : reading,
        );
        expect(on).toEqual([{ row: wrong, turns: -1, isAlone: false }]);
      }),
    ));

  it('cannot tell without the travel of a turn, nor from a single row', () => {
    const series = numbersOf(worksheetSeries(millE, worksheetRows(millE)));
    expect(missedTurns(series, undefined)).toEqual([]);
    const single = { ...millE, readings: millE.readings.slice(0, 1) };
    expect(missedTurns(numbersOf(worksheetSeries(single, worksheetRows(single))), 1e-3)).toEqual(
      [],
    );
  });
});

describe('missedTurns by hand, where a newton metre is usually 0.3 of a turn', () => {
  const turn = 1e-3;
  const { series } = evaluateWorksheet(millE);
  const found = (torques: readonly number[], turns: readonly number[], travel = turn) =>
    missedTurns(
      {
        ...numbersOf(series),
        rows: torques.map((_, i) => 2 * i + 1),
        torques,
        elongations: turns.map((stretch) => stretch * turn),
      },
      travel,
    );

  it('takes a long step for what its torque is worth', () =>
    expect(found([1, 2, 4, 7], [0, 0.3, 0.9, 1.8])).toEqual([]));

  it('finds a turn missed in a step that is longer than the others, by its row', () =>
    expect(found([10, 11, 13, 16], [0, 0.3, 0.9, 0.8])).toEqual([
      { row: 7, turns: 1, isAlone: false },
    ]));

  it('finds one in the first step', () =>
    expect(found([10, 13, 14, 16], [0, 1.9, 2.2, 2.8])).toEqual([
      { row: 3, turns: -1, isAlone: false },
    ]));

  it('does not judge a step down, where friction holds the band', () =>
    expect(found([1, 2, 3, 2, 3], [0, 0.3, 0.6, -0.7, -0.4])).toEqual([]));

  it('does not let a repeat at the same torque shift what is usual', () =>
    expect(found([1, 2, 3, 3, 4], [0, 0.3, 0.6, 0.61, 1.91])).toEqual([
      { row: 9, turns: -1, isAlone: false },
    ]));

  it('finds one on a repeat at the same torque, where nothing should move', () =>
    expect(found([1, 2, 3, 3, 4], [0, 0.3, 0.6, -0.39, -0.1])).toEqual([
      { row: 7, turns: 1, isAlone: false },
    ]));

  it('cannot tell by a travel that is none', () => {
    expect(found([10, 11, 13, 16], [0, 0.3, 0.9, 0.8], -turn)).toEqual([]);
    expect(found([10, 11, 13, 16], [0, 0.3, 0.9, 0.8], 0)).toEqual([]);
  });
});

describe('missedTurns of several series, and of rows at no torque', () => {
  it('does not look from the end of one to the start of the next', () => {
    const again = millE.readings.map((row, i) => ({ ...row, ...(i === 0 && { series: 2 }) }));
    const { rig } = millE;
    const worksheet = { ...millE, rig, readings: [...millE.readings, ...again] };
    const series = numbersOf(worksheetSeries(worksheet, worksheetRows(worksheet)));
    expect(missedTurns(series, rig.travelPerTurn)).toEqual([]);
  });

  it('takes no step from a slack band for a turn', () => {
    const travel = millE.rig.travelPerTurn as number;
    const [first] = millE.readings as [WorksheetReading];
    const slack = { ...first, torque: 0, dial: (first.dial as number) - travel };
    const worksheet = { ...millE, readings: [slack, ...millE.readings] };
    const series = numbersOf(worksheetSeries(worksheet, worksheetRows(worksheet)));
    expect(missedTurns(series, travel)).toEqual([]);
  });
});
