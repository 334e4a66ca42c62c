import { describe, expect, it } from 'vitest';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf, refusalOf } from '../../fixtures/ready.ts';
import { millA, millE, worksheetMills } from '../fixtures/mills.ts';

const dialOf = (worksheet: Worksheet) => numbersOf(evaluateWorksheet(worksheet).dialSetting);
const withRig = (worksheet: Worksheet, change: Partial<Worksheet['rig']>): Worksheet => ({
  ...worksheet,
  rig: { ...worksheet.rig, ...change },
});

describe('the dial at the setting', () => {
  // By hand: 208.019 µm for 106.800 MPa is 214.252 for 110; from a zero 47.453 below the first reading.
  it('of mill A shows 0.470 − 0.166799 mm', () => {
    const { dial, wholeTurns } = dialOf(millA);
    expect(dial).toBeCloseTo(0.47e-3 - 166.799e-6, 8);
    expect(wholeTurns).toBe(0);
  });

  it.each(Object.entries(worksheetMills))(
    'of mill %s is a row that gives the target back',
    (_, mill) => {
      const { dial, wholeTurns } = dialOf(mill);
      const name = 'at the setting';
      const ways = [{ name, torque: undefined, readings: [{ dial, wholeTurns }] }];
      const [way] = evaluateWorksheet({ ...mill, ways }).ways;
      const { stress } = numbersOf(evaluateWorksheet(mill).setting);
      expect(way && numbersOf(way.fromReadings).stress / stress).toBeCloseTo(1, 9);
    },
  );

  it('gives the target back also with a heavy bar, and after many turns of a fine dial', () => {
    const heavy = withRig(millA, { barHeight: 0.02, barWeight: 3 });
    const fine = withRig(millA, { travelPerTurn: 1e-4 });
    for (const mill of [heavy, fine]) {
      const ways = [{ name: 'the same', torque: undefined, readings: [dialOf(mill)] }];
      const [way] = evaluateWorksheet({ ...mill, ways }).ways;
      const { stress } = numbersOf(evaluateWorksheet(mill).setting);
      expect(way && numbersOf(way.fromReadings).stress / stress).toBeCloseTo(1, 2);
    }
    // 0.303 mm are three turns of 0.1 mm and a bit, against the way that the hand runs.
    expect(dialOf(fine).wholeTurns).toBe(-3);
    expect(dialOf(fine).dial).toBeCloseTo(0.0032e-3, 7);
    expect(Object.is(dialOf(millA).wholeTurns, 0)).toBe(true);
  });

  it('counts the turns of the hand, either way it runs', () => {
    const { rig, readings } = millE;
    const turned = dialOf(millE);
    expect(turned.dial).toBeGreaterThanOrEqual(0);
    expect(turned.dial).toBeLessThan(rig.travelPerTurn as number);
    const mirrored = readings.map((reading) => ({ ...reading, dial: -(reading.dial as number) }));
    const other = {
      ...withRig(millE, { dialRunsBackwards: !rig.dialRunsBackwards }),
      readings: mirrored,
    };
    const found = dialOf(other);
    expect(found.dial).toBeGreaterThanOrEqual(0);
    expect(found.dial).toBeLessThan(rig.travelPerTurn as number);
    const sum = (turned.dial + found.dial) / (rig.travelPerTurn as number);
    expect(sum).toBeCloseTo(Math.round(sum), 9);
  });

  it('is carried on without turns where the travel of one is not known', () => {
    const known = dialOf(millA);
    expect(dialOf(withRig(millA, { travelPerTurn: undefined })).dial).toBeCloseTo(known.dial, 15);
    const low = millA.readings.map((reading) => ({
      ...reading,
      dial: (reading.dial as number) - 0.4e-3,
    }));
    const blind = withRig({ ...millA, readings: low }, { travelPerTurn: undefined });
    expect(dialOf(blind).dial).toBeCloseTo(known.dial - 0.4e-3, 12);
    const seen = dialOf({ ...millA, readings: low });
    expect(seen.dial).toBeCloseTo(known.dial - 0.4e-3 + 1e-3, 12);
    expect(seen.wholeTurns).toBe(1);
  });

  it('waits for a target, and is stopped as the setting is', () => {
    const target = { ...millA.target, stress: undefined };
    expect(evaluateWorksheet({ ...millA, target }).dialSetting).toEqual({
      ready: false,
      waitsFor: ['target.stress'],
    });
    const limited = { ...millA, target: { ...millA.target, makerLimitStress: 100e6 } };
    expect(refusalOf(evaluateWorksheet(limited).dialSetting)).toBe('aboveBandLimit');
  });
});

describe('the dial at the setting, written as the readings are', () => {
  const fine = { travelPerTurn: 1e-4 };
  const noted = (wholeTurns: number | undefined): Worksheet['readings'] =>
    millA.readings.map((row) => ({ ...row, wholeTurns }));

  it('goes on as one number where turns and hand are written together', () => {
    const apart = dialOf(withRig(millA, { ...fine, dialWritten: 'handOnly' }));
    const together = dialOf(withRig(millA, { ...fine, dialWritten: 'together' }));
    expect(apart.wholeTurns).toBe(-3);
    expect(together.wholeTurns).toBe(0);
    expect(together.dial).toBeCloseTo(apart.dial - apart.wholeTurns * fine.travelPerTurn, 12);
    const turned = dialOf(
      withRig({ ...millA, readings: noted(2) }, { ...fine, dialWritten: 'together' }),
    );
    expect(turned).toMatchObject({ dial: together.dial, wholeTurns: 2 }); // a row that gives the target back
  });

  it.each([
    ['none', undefined, 'together'],
    ['a nought', 0, 'handOnly'],
  ] as const)('while it is not said, follows the rows: %s noted is %s', (_, turns, way) => {
    const mill = withRig({ ...millA, readings: noted(turns) }, fine);
    expect(mill.rig.dialWritten).toBe('unasked');
    expect(dialOf(mill)).toEqual(dialOf(withRig(mill, { dialWritten: way })));
  });
});

describe('the dial at the setting of several series', () => {
  it('is told for each, and first for the last, where bar and dial still stand', () => {
    const moved = (by: number, series: number) =>
      millA.readings.map((row) => ({ ...row, dial: (row.dial as number) - by, series }));
    const found = dialOf({ ...millA, readings: [...moved(0, 1), ...moved(50e-6, 2)] });
    expect(found.each.map(({ series }) => series)).toEqual([1, 2]);
    expect(found).toMatchObject(found.each[1] as object);
    const [first, last] = found.each.map(({ dial }) => dial) as [number, number];
    expect(first - last).toBeCloseTo(50e-6, 12);
  });
});
