import { describe, expect, it } from 'vitest';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { dialDirection } from '../../../../src/core/worksheet/measure/dial-direction.ts';
import { worksheetRows } from '../../../../src/core/worksheet/measure/readings.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { worksheetMills } from '../fixtures/mills.ts';

const unsaid = (sheet: Worksheet): Worksheet => ({
  ...sheet,
  rig: { ...sheet.rig, dialRunsBackwards: undefined },
});
const directionOf = (sheet: Worksheet) => dialDirection(sheet.rig, worksheetRows(sheet));

/** The same series on a dial that runs the other way. */
const turned = (sheet: Worksheet): Worksheet => ({
  ...sheet,
  readings: sheet.readings.map((reading) => ({ ...reading, dial: 0.05 - (reading.dial ?? 0) })),
});

describe('dialDirection', () => {
  it('is as said, whatever the readings are', () => {
    const { A } = worksheetMills;
    const said = { ...A, rig: { ...A.rig, dialRunsBackwards: false } };
    expect(directionOf(said)).toEqual({ backwards: false, isSaid: true });
  });

  it.each(['A', 'B', 'C', 'E', 'F'] as const)(
    'is found from the readings of mill %s, toe and whole turns included',
    (letter) => {
      const sheet = unsaid(worksheetMills[letter]);
      expect(directionOf(sheet)).toEqual({ backwards: true, isSaid: false });
      expect(directionOf(turned(sheet))).toEqual({ backwards: false, isSaid: false });
    },
  );

  it('gives the stress that it gives when said, and says that it was taken', () => {
    const [said, taken] = [worksheetMills.C, unsaid(worksheetMills.C)].map(evaluateWorksheet);
    expect(taken?.measured).toEqual(said?.measured);
    expect(taken?.dialSetting).toEqual(said?.dialSetting);
    expect(taken?.guards.map(({ code }) => code)).toContain('dialDirectionTaken');
    expect(said?.guards.map(({ code }) => code)).not.toContain('dialDirectionTaken');
    expect(
      numbersOf(evaluateWorksheet(turned(unsaid(worksheetMills.C))).measured).stress,
    ).toBeCloseTo(numbersOf(evaluateWorksheet(worksheetMills.C).measured).stress, 0);
  });

  it('stays open without three readings, at two torques or more', () => {
    const { A } = worksheetMills;
    expect(directionOf({ ...unsaid(A), readings: A.readings.slice(0, 2) })).toBeUndefined();
    expect(directionOf({ ...unsaid(A), readings: A.readings.slice(0, 1) })).toBeUndefined();
    expect(directionOf({ ...unsaid(A), readings: [] })).toBeUndefined();
    const sameTorque = A.readings.slice(0, 3).map((reading) => ({ ...reading, torque: 5 }));
    expect(directionOf({ ...unsaid(A), readings: sameTorque })).toBeUndefined();
  });

  it('looks at all readings where only two are in the upper half', () => {
    const { A } = worksheetMills;
    const readings = [...A.readings.slice(0, 3), ...A.readings.slice(-2)];
    expect(directionOf({ ...unsaid(A), readings })).toEqual({ backwards: true, isSaid: false });
  });
});
