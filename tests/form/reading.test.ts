/** From what is typed to the core's worksheet: values, sentences beside boxes, nothing thrown. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyWorksheet, evaluateWorksheet } from '../../src/core/worksheet.ts';
import { sheetReader } from '../../src/form/reading.ts';
import { blank, type Typed, typedFrom, withTyped } from '../../src/form/typed.ts';
import type { UnitSystem } from '../../src/units/kinds.ts';
import { anySheet } from './random-sheet.ts';

const read = (typed: Typed, system: UnitSystem = 'metric') => sheetReader()(typed, system);
const typed = (...pairs: readonly (readonly [string, string])[]): Typed => typedFrom(pairs);

describe('a sheet that is read', () => {
  it('is the core’s empty worksheet while nothing is typed', () => {
    const { worksheet, refusals } = read(blank);
    expect(worksheet).toEqual(emptyWorksheet);
    expect(refusals).toEqual({});
  });

  it('takes fractions, units and both systems', () => {
    const { band } = read(
      typed(['band.bodyWidth', '1 1/4'], ['band.thickness', '1.1 mm']),
      'us',
    ).worksheet;
    expect(band.bodyWidth).toBeCloseTo(0.03175, 12);
    expect(band.thickness).toBeCloseTo(0.0011, 12);
  });

  it('has the accuracy of the wrench and the tool of the thickness, once they are told', () => {
    const { tensioner, band } = read(
      typed(['tensioner.wrenchClass', '6'], ['band.thicknessFrom', 'caliper']),
    ).worksheet;
    expect(tensioner.wrenchClass).toBeCloseTo(0.06, 12);
    expect(band.thicknessFrom).toBe('caliper');
  });

  it.each([
    ['band.thickness', '-1', /more than 0/],
    ['tensioner.dragTorque', '-1', /cannot be negative/],
    ['band.thickness', '2 in', /That is 50.8.mm.*Check the unit/],
    ['band.thickness', '0.1', /Usual here/],
    ['readings.0.torque', '10000', /Check the unit/],
    ['readings.0.wholeTurns', '0.5', /not whole/],
  ])('says what is wrong with %s = %s', (path, value, says) => {
    const { refusals, doubts } = read(typed([path, value]));
    expect(refusals[path] ?? doubts[path]).toMatch(says);
  });

  it('uses a value that is only unusual, and says so', () => {
    const { worksheet, doubts } = read(typed(['band.thickness', '0.3']));
    expect(worksheet.band.thickness).toBeCloseTo(0.3e-3, 12);
    expect(doubts['band.thickness']).toMatch(/Usual here: 0.5.to.3.mm/);
  });

  it('has its rows, with gaps, and those of its ways', () => {
    const { readings, ways } = read(
      typed(['readings.1.torque', '3'], ['ways.0.name', 'mark'], ['ways.0.readings.1.dial', '0.4']),
    ).worksheet;
    const nothing = { torque: undefined, dial: undefined, wholeTurns: undefined, turns: undefined };
    const empty = { ...nothing, series: undefined, struck: '' };
    expect(readings).toEqual([empty, { ...empty, torque: 3 }]);
    expect(ways).toEqual([
      {
        name: 'mark',
        torque: undefined,
        readings: [
          { dial: undefined, wholeTurns: undefined },
          { dial: 0.4e-3, wholeTurns: undefined },
        ],
      },
    ]);
  });

  it('has a collar and an own thread only where they are chosen, and as many other bands as rows', () => {
    const { tensioner, bands } = read(
      typed(
        ['tensioner.collar.kind', 'washer'],
        ['tensioner.collar.frictionLow', '0.1'],
        ['tensioner.thread.kind', 'own'],
        ['bands.1.name', 'wide one'],
        ['bands.1.thickness', '1.1'],
      ),
    ).worksheet;
    expect(tensioner.collar).toMatchObject({ kind: 'washer', frictionLow: 0.1 });
    const bearing = typed(['tensioner.collar.kind', 'bearing']);
    expect(read(bearing).worksheet.tensioner.collar).toEqual({
      kind: 'bearing',
      outerDiameter: undefined,
      innerDiameter: undefined,
    });
    expect(read(blank).worksheet.tensioner.collar).toEqual({ kind: 'unknown' });
    expect(tensioner.thread.kind).toBe('own');
    const empty = { name: '', bodyWidth: undefined, thickness: undefined, targetStress: undefined };
    expect(bands).toEqual([empty, { ...empty, name: 'wide one', thickness: 1.1e-3 }]);
  });

  it('keeps the very rows in which nothing has changed', () => {
    const reader = sheetReader();
    const torques = ['2', '4', '6'].map((text, row) => [`readings.${row}.torque`, text] as const);
    const three = typed(...torques);
    const before = reader(three, 'metric').worksheet.readings;
    const changed = withTyped(three, 'readings.1.torque', '5');
    const after = reader(changed, 'metric').worksheet.readings;
    expect(after.map(({ torque }) => torque)).toEqual([2, 5, 6]);
    expect(after.map((row, at) => row === before[at])).toEqual([true, false, true]);
  });

  it('again after a change is read as if for the first time', () =>
    fc.assert(
      fc.property(anySheet, anySheet, (before, after) => {
        const reader = sheetReader();
        reader(before, 'metric');
        expect(reader(after, 'metric')).toEqual(read(after, 'metric'));
        expect(reader(after, 'us')).toEqual(read(after, 'us'));
        expect(reader(before, 'us')).toEqual(read(before, 'us'));
      }),
    ));

  it('whatever is typed, is reckoned with and never throws', () =>
    fc.assert(
      fc.property(anySheet, (any) => {
        expect(() => evaluateWorksheet(read(any, 'us').worksheet)).not.toThrow();
      }),
    ));
});
