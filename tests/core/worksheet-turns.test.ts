import { describe, expect, it } from 'vitest';
import { evaluateWorksheet } from '../../src/core/worksheet.ts';
import type { Worksheet, WorksheetReading } from '../../src/core/worksheet-form.ts';
import { numbersOf, refusalOf } from './fixtures/ready.ts';
import { worksheetMillResults } from './fixtures/worksheet-mill-results.ts';
import { millA, worksheetMills } from './fixtures/worksheet-mills.ts';

const turnsOf = (worksheet: Worksheet) => evaluateWorksheet(worksheet).turns;
const turned = (change: (turns: number) => number | undefined): Worksheet => ({
  ...millA,
  readings: millA.readings.map(
    (reading): WorksheetReading => ({
      ...reading,
      turns: change(reading.turns as number),
    }),
  ),
});

describe('worksheetTurns', () => {
  it.each(['A', 'B', 'C', 'E', 'F'] as const)(
    'gives mill %s its stiffness, worked by other code',
    (letter) => {
      const found = numbersOf(turnsOf(worksheetMills[letter]));
      const expected = worksheetMillResults[letter];
      expect(found.totalStiffness / expected.totalStiffness).toBeCloseTo(1, 3);
      expect((found.supportStiffness as number) / expected.supportStiffness).toBeCloseTo(1, 2);
    },
  );

  it('halves the stiffness for twice the turns', () => {
    const ratio =
      numbersOf(turnsOf(turned((turns) => 2 * turns))).totalStiffness /
      numbersOf(turnsOf(millA)).totalStiffness;
    expect(ratio).toBeCloseTo(0.5, 12);
  });

  it('says nothing of a frame that the turns cannot show, and tells turns that are missing', () => {
    const few = numbersOf(turnsOf(turned((turns) => 0.5 * turns)));
    expect(few).toMatchObject({ supportStiffness: undefined, fewerTurnsThanBand: true });
    const close = numbersOf(turnsOf(turned((turns) => 0.6 * turns)));
    expect(close).toMatchObject({ supportStiffness: undefined, fewerTurnsThanBand: false });
  });

  it('waits for two rows with turns, and refuses turns that fall', () => {
    const waiting = { ready: false, waitsFor: ['readings'] };
    expect(turnsOf(turned(() => undefined))).toEqual(waiting);
    expect(turnsOf(turned((turns) => (turns > 0.45 ? turns : undefined)))).toEqual(waiting);
    expect(refusalOf(turnsOf(turned((turns) => -turns)))).toBe('turnsFall');
  });
});
