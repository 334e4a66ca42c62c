import { describe, expect, it } from 'vitest';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millA } from '../fixtures/mills.ts';

const slack = { torque: 0, dial: 0.5e-3, wholeTurns: 0, turns: undefined };
const struck = { torque: 9, dial: 0.1e-3, wholeTurns: 0, turns: undefined, struck: 'slipped' };
const light = { ...slack, torque: 0.5 };
const open = { ...slack, dial: undefined, torque: 3 };
const reasonsOf = (readings: typeof millA.readings) =>
  evaluateWorksheet({ ...millA, readings }).rowReasons;

describe('the rows that are not used', () => {
  const readings = [slack, light, ...millA.readings, struck, open];

  it('are named with their reason, in their order', () =>
    expect(reasonsOf(readings)).toEqual([
      { row: 0, reason: 'noTorque' },
      { row: 1, reason: 'belowDrag' },
      { row: 12, reason: 'struck' },
      { row: 13, reason: 'notUsable' },
    ]));

  it('change nothing of the stress, and only say where the dial begins', () => {
    const [all, bare] = [readings, millA.readings].map((each) =>
      evaluateWorksheet({ ...millA, readings: each }),
    );
    const [one, other] = [
      numbersOf(all?.measured as never),
      numbersOf(bare?.measured as never),
    ] as {
      readonly stress: number;
    }[];
    expect(one?.stress).toBeCloseTo(other?.stress as number, 0);
    expect(all?.series).toMatchObject({ struck: [12], leftOut: [13] });
    expect(all?.guards.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['rowsStruck', 'rowsWithoutTorque', 'rowsBelowDrag', 'rowsLeftOut']),
    );
  });

  it('are none where every row is used or empty', () =>
    expect(reasonsOf(millA.readings)).toEqual([]));

  it('are named while there is nothing else yet', () =>
    expect(reasonsOf([slack])).toEqual([{ row: 0, reason: 'noTorque' }]));
});
