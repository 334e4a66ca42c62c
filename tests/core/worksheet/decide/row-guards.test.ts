import { describe, expect, it } from 'vitest';
import { rowsGuard, seriesGuards } from '../../../../src/core/worksheet/decide/row-guards.ts';
import type { Worksheet, WorksheetReading } from '../../../../src/core/worksheet/inputs.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millD } from '../fixtures/hydraulic-mill.ts';
import { millA, millE } from '../fixtures/mills.ts';

const guardsOf = (worksheet: Worksheet) =>
  seriesGuards(numbersOf(evaluateWorksheet(worksheet).series), worksheet);
const codes = (worksheet: Worksheet) => guardsOf(worksheet).map(({ code }) => code);
const rows = (
  mill: Worksheet,
  change: (reading: WorksheetReading, row: number) => WorksheetReading,
) => ({ ...mill, readings: mill.readings.map(change) });

describe('rowsGuard', () => {
  it('counts the rows and names them, and says nothing of none', () => {
    expect(rowsGuard('rowsStruck', [2, 5])).toEqual([
      {
        code: 'rowsStruck',
        level: 'note',
        values: { count: 2 },
        inputs: ['readings.2', 'readings.5'],
      },
    ]);
    expect(rowsGuard('rowsStruck', [])).toEqual([]);
  });
});

describe('seriesGuards', () => {
  it('names the row at which the dial goes back, unless it is told already what is wrong there', () => {
    const first = millD.readings[0]?.dial ?? 0;
    const low = (stretches: readonly (number | undefined)[]) =>
      rows(millD, (reading, row) => {
        const stretch = stretches[row];
        return stretch === undefined ? reading : { ...reading, dial: first - stretch };
      });
    expect(millD.rig.dialRunsBackwards).toBe(true); // a number that grows is a band that grew shorter
    expect(guardsOf(low([0, 40e-6, 10e-6]))).toContainEqual({
      code: 'dialFalls',
      level: 'warn',
      values: { row: 2, back: expect.closeTo(30e-6, 9) },
      inputs: ['readings.2.dial'],
    });
    expect(codes(low([0, 40e-6, 35e-6]))).not.toContain('dialFalls'); // a wobble
    expect(codes(low([0, -40e-6, -10e-6]))).not.toContain('dialFalls'); // a toe that comes back
    const slipped = rows(millA, (reading, row) =>
      row === 6 ? { ...reading, dial: 0.475e-3 } : reading,
    );
    expect(codes(slipped)).toContain('oddRow');
    expect(codes(slipped)).not.toContain('dialFalls');
    const blind = rows(millE, (reading) => ({ ...reading, wholeTurns: 0 }));
    expect(codes(blind)).not.toContain('dialFalls');
  });

  it('says nothing of single rows while the dial may be in marks instead of lengths', () => {
    const dials = [0, 1, 3, 4, 6, 7, 9, 10]; // mm; or marks
    const on = (graduation: number) => ({
      ...rows(millE, (_, row) => ({
        torque: 5 * (row + 1),
        dial: (dials[row] ?? 0) * 1e-3,
        wholeTurns: 0,
        turns: undefined,
      })),
      rig: { ...millE.rig, graduation, readTo: graduation, travelPerTurn: 1e-3 },
    });
    expect(codes(on(1e-4))).toContain('missedDialTurn');
    expect(codes(on(1e-5))).toEqual([]);
  });

  it('names the row from which the handle was loosened, but takes a second pass for none', () => {
    const down = { ...millA, readings: millA.readings.toReversed() };
    expect(guardsOf(down)).toContainEqual({
      code: 'torqueFalls',
      level: 'warn',
      values: { row: 1 },
      inputs: ['readings'],
    });
    const [first, ...others] = millA.readings as [WorksheetReading, ...WorksheetReading[]];
    const last = others.slice(-3, -1).toReversed();
    expect(guardsOf({ ...millA, readings: [...millA.readings, ...last] })).toContainEqual(
      expect.objectContaining({ code: 'torqueFalls', values: { row: millA.readings.length } }),
    );
    const [top, ...before] = millA.readings.toReversed() as [
      WorksheetReading,
      ...WorksheetReading[],
    ];
    const repeats = [...before.toReversed(), top, top, top];
    expect(codes({ ...millA, readings: repeats })).not.toContain('torqueFalls');
    const twice = { ...millA, readings: [first, ...others, first, ...others] };
    expect(codes(twice)).not.toContain('torqueFalls');
    expect(codes({ ...millA, readings: [first, ...others, first] })).not.toContain('torqueFalls');
  });

  it('names the row from which a turn of the dial is missing', () => {
    const blind = rows(millE, (reading) => ({ ...reading, wholeTurns: 0 }));
    expect(guardsOf(blind)).toContainEqual({
      code: 'missedDialTurn',
      level: 'warn',
      values: { row: 7, turns: 1, isAlone: 0 },
      inputs: ['readings.7.wholeTurns'],
    });
  });

  it('names the row that stands apart, unless a turn of the dial explains it', () => {
    const slipped = rows(millA, (reading, row) =>
      row === 6 ? { ...reading, dial: 0.475e-3 } : reading,
    );
    expect(guardsOf(slipped)).toContainEqual({
      code: 'oddRow',
      level: 'warn',
      values: { row: 6, off: expect.closeTo(-100e-6, 5) },
      inputs: ['readings.6.dial'],
    });
    const turned = rows(millE, (reading, row) =>
      row === 5 ? { ...reading, wholeTurns: 1 } : reading,
    );
    expect(codes(turned)).toContain('missedDialTurn');
    expect(codes(turned)).not.toContain('oddRow');
  });
});
