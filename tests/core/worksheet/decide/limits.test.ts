import { describe, expect, it } from 'vitest';
import {
  allowedStress,
  readingsBeyondAllowed,
} from '../../../../src/core/worksheet/decide/limits.ts';
import type { WorksheetGuard } from '../../../../src/core/worksheet/decide/rails.ts';
import type { Worksheet, WorksheetWay } from '../../../../src/core/worksheet/inputs.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millA, millC } from '../fixtures/mills.ts';

const limited = (target: Partial<Worksheet['target']>, mill: Worksheet = millA): Worksheet => ({
  ...mill,
  target: { ...mill.target, ...target },
});
const allowedBy = (worksheet: Worksheet) => allowedStress(worksheet, evaluateWorksheet(worksheet));
const told = (worksheet: Worksheet, code: WorksheetGuard['code']) =>
  evaluateWorksheet(worksheet).guards.filter((guard) => guard.code === code);
const withWay = (way: Partial<WorksheetWay>, worksheet: Worksheet = millA): Worksheet => ({
  ...worksheet,
  ways: [
    { name: 'first', torque: 10, readings: [] },
    { name: 'mark', torque: undefined, readings: [], ...way },
  ],
});

describe('allowedStress', () => {
  it('is the lower of what band and mill may carry; 29 mm² and two strands', () => {
    expect(allowedBy(limited({ makerLimitStress: 120e6 }))).toBe(120e6);
    expect(allowedBy(limited({ makerLimitWheelForce: 5800 }))).toBeCloseTo(100e6, 3);
    const both = { makerLimitStress: 99e6, makerLimitWheelForce: 5800 };
    expect(allowedBy(limited(both))).toBe(99e6);
    expect(allowedBy(limited({ ...both, makerLimitStress: 101e6 }))).toBeCloseTo(100e6, 3);
  });

  it('counts the lean of the strands', () => {
    const mill = limited({ makerLimitWheelForce: 5000, makerLimitStress: undefined }, millC);
    const { section, strands } = evaluateWorksheet(mill);
    const { area } = numbersOf(section);
    const { strandHalfAngle } = numbersOf(strands);
    expect(strandHalfAngle).toBeGreaterThan(0.01);
    expect(allowedBy(mill)).toBeCloseTo(5000 / (2 * area * Math.cos(strandHalfAngle)), 3);
  });

  it('is not known without a limit, nor from what cannot be one', () => {
    const none = { makerLimitStress: undefined, makerLimitWheelForce: undefined };
    expect(allowedBy(limited(none))).toBeUndefined();
    expect(allowedBy(limited({ ...none, makerLimitStress: -1 }))).toBeUndefined();
    const unmeasured = { ...millA, band: { ...millA.band, thickness: undefined } };
    expect(allowedBy(limited({ ...none, makerLimitWheelForce: 5800 }, unmeasured))).toBeUndefined();
    const wheelless = { ...millA, mill: { ...millA.mill, wheelDiameter2: -1 } };
    expect(allowedBy(limited({ ...none, makerLimitWheelForce: 5800 }, wheelless))).toBeUndefined();
  });
});

describe('readings beyond what is allowed', () => {
  const { measured } = evaluateWorksheet(millA);
  const { stress } = numbersOf(measured);

  it('are told with both stresses', () =>
    expect(told(limited({ makerLimitStress: 101e6 }), 'readingsAboveAllowed')).toEqual([
      {
        code: 'readingsAboveAllowed',
        level: 'warn',
        values: { stress, allowed: 101e6 },
        inputs: ['readings'],
      },
    ]));

  it('are none up to the limit, without a limit, or while no stress is known', () => {
    expect(readingsBeyondAllowed(measured, stress)).toEqual([]);
    expect(readingsBeyondAllowed(measured, undefined)).toEqual([]);
    expect(readingsBeyondAllowed({ ready: false, waitsFor: [] }, 1)).toEqual([]);
  });
});

describe('a torque in use that may be beyond what is allowed', () => {
  const using = (torque: number | undefined) => ({
    ...limited({ makerLimitStress: 101e6, makerLimitWheelForce: undefined }),
    use: { ...millA.use, torque },
  });
  const highest = evaluateWorksheet(using(undefined)).allowedLoad?.load ?? Number.NaN;

  it('is told with the highest that is allowed', () =>
    expect(told(using(1.01 * highest), 'useMayExceed')).toEqual([
      {
        code: 'useMayExceed',
        level: 'warn',
        values: { torque: 1.01 * highest, highest },
        inputs: ['use.torque'],
      },
    ]));

  it('is none up to that, without a torque in use, or without a limit', () => {
    expect(told(using(highest), 'useMayExceed')).toEqual([]);
    expect(told(using(undefined), 'useMayExceed')).toEqual([]);
    const free = limited({ makerLimitStress: undefined, makerLimitWheelForce: undefined });
    expect(told({ ...free, use: { ...millA.use, torque: 40 } }, 'useMayExceed')).toEqual([]);
  });
});

describe('a way beyond what is allowed, or beyond the readings', () => {
  it('is told by its torque, with its place', () => {
    const mill = limited({ makerLimitStress: 111e6 }, withWay({ torque: 30 }));
    const way = evaluateWorksheet(mill).ways[1];
    const { stress } = numbersOf(way?.fromTorque ?? { ready: false, waitsFor: [] });
    const inputs = ['ways.1'];
    expect(told(mill, 'wayAboveAllowed')).toEqual([
      { code: 'wayAboveAllowed', level: 'warn', values: { stress, allowed: 111e6 }, inputs },
    ]);
    expect(told(mill, 'wayBeyondReadings')).toEqual([
      { code: 'wayBeyondReadings', level: 'note', values: { torque: 30, topTorque: 14.5 }, inputs },
    ]);
  });

  it('is told by its own readings too', () => {
    const readings = [{ dial: 0.1e-3, wholeTurns: undefined }];
    const mill = limited({ makerLimitStress: 120e6 }, withWay({ readings }));
    const { stress } = numbersOf(
      evaluateWorksheet(mill).ways[1]?.fromReadings ?? { ready: false, waitsFor: [] },
    );
    expect(stress).toBeGreaterThan(120e6);
    expect(told(mill, 'wayAboveAllowed')[0]?.values).toEqual({ stress, allowed: 120e6 });
    expect(told(mill, 'wayBeyondReadings')).toEqual([]);
  });

  it('is told by the higher stress where torque and readings give two', () => {
    const readings = [{ dial: 0.1e-3, wholeTurns: undefined }];
    const mill = limited({ makerLimitStress: 120e6 }, withWay({ torque: 5, readings }));
    expect(told(mill, 'wayAboveAllowed')[0]?.values['stress']).toBeGreaterThan(120e6);
  });

  it('is none exactly at what is allowed, nor while it has neither torque nor readings', () => {
    const mill = withWay({ torque: 12 });
    const at = evaluateWorksheet(mill).ways[1]?.fromTorque ?? { ready: false, waitsFor: [] };
    const { stress } = numbersOf(at);
    expect(told(limited({ makerLimitStress: stress }, mill), 'wayAboveAllowed')).toEqual([]);
    expect(told(limited({ makerLimitStress: 100e6 }, withWay({})), 'wayAboveAllowed')).toEqual([]);
  });

  it('is none within them', () => {
    const mill = limited({ makerLimitStress: 200e6 }, withWay({ torque: 14.5 }));
    expect(told(mill, 'wayAboveAllowed')).toEqual([]);
    expect(told(mill, 'wayBeyondReadings')).toEqual([]);
    expect(told(withWay({ torque: 14.6 }), 'wayBeyondReadings')).toHaveLength(1);
    expect(told(withWay({ torque: 14.6 }), 'wayAboveAllowed')).toEqual([]);
  });
});
