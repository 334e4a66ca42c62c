import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { missedTurns } from '../../src/core/worksheet-dial-turns.ts';
import type { WorksheetReading } from '../../src/core/worksheet-form.ts';
import { worksheetRows, worksheetSeries } from '../../src/core/worksheet-readings.ts';
import { numbersOf } from './fixtures/ready.ts';
import { millE, worksheetMills } from './fixtures/worksheet-mills.ts';

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
      { row: 7, turns: 1 },
    ]));

  it('finds a turn too many anywhere, for one row or from there on', () =>
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 6 }), (wrong) => {
        const one = missed(millE, (reading, row) =>
          row === wrong ? { ...reading, wholeTurns: 1 } : reading,
        );
        expect(one).toContainEqual({ row: wrong, turns: -1 });
        const on = missed(millE, (reading, row) =>
          row >= wrong ? { ...reading, wholeTurns: (reading.wholeTurns ?? 0) + 1 } : reading,
        );
        expect(on).toEqual([{ row: wrong, turns: -1 }]);
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
