/** The load at the makers' limit: its interval ends there, and nothing is told without a limit or a stress. */
import { describe, expect, it } from 'vitest';
import { stressAtLoad } from '../../../../src/core/worksheet/decide/stress-at-load.ts';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import {
  evaluateWorksheet,
  loadName,
  trialsOfPrediction,
  worksheetChain,
  worksheetMeasurement,
} from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millD } from '../fixtures/hydraulic-mill.ts';
import { millA, millB } from '../fixtures/mills.ts';
import { stretched } from '../fixtures/stretched.ts';

const noWay = { ready: false, waitsFor: [] } as const;

const none = { makerLimitStress: undefined, makerLimitWheelForce: undefined };
const limited = (target: Partial<Worksheet['target']>, mill = millA): Worksheet => ({
  ...mill,
  target: { ...mill.target, ...none, ...target },
});
const allowedIn = (worksheet: Worksheet) => evaluateWorksheet(worksheet).allowedLoad;
const highest = (worksheet: Worksheet) => allowedIn(worksheet)?.load;
const reachAt = (worksheet: Worksheet, load: number): number => {
  const { theory } = worksheetChain(worksheet);
  const { measured } = worksheetMeasurement(worksheet);
  const { stress, expandedUncertainty } = stressAtLoad({ theory, measured }, load) ?? {};
  return (stress ?? 0) + (expandedUncertainty ?? 0);
};

const LAST_DIGITS = 1e-14; // of a double

describe('allowedLoad', () => {
  it.each([
    ['read', limited({ makerLimitStress: 90e6 }), 90e6],
    ['beyond the readings', limited({ makerLimitStress: 250e6 }), 250e6],
    ['of a cylinder', limited({ makerLimitStress: 140e6 }, millD), 140e6],
  ])(
    'is where the interval of the stress reaches the limit, and never past it: %s',
    (_, worksheet, limit) => {
      const load = highest(worksheet) ?? 0;
      expect(reachAt(worksheet, load)).toBeLessThanOrEqual(limit * (1 + LAST_DIGITS));
      expect(reachAt(worksheet, 1.001 * load)).toBeGreaterThan(limit);
    },
  );

  const openScrew: Worksheet['tensioner'] = {
    ...millA.tensioner,
    friction: { kind: 'unknown', low: undefined, high: undefined },
    collar: { kind: 'unknown' },
  };

  it.each([
    ['a screw', { ...limited({ makerLimitStress: 90e6 }), readings: [] }, 90e6],
    [
      'a screw of which little is known',
      { ...limited({ makerLimitStress: 90e6 }), readings: [], tensioner: openScrew },
      90e6,
    ],
    ['a cylinder', { ...limited({ makerLimitStress: 140e6 }, millD), readings: [] }, 140e6],
  ])(
    'is without readings where trials of %s reach the limit, to within 3 %%, and below where its interval to first order does',
    (_, worksheet, limit) => {
      const load = highest(worksheet) ?? 0;
      const used = {
        ...worksheet,
        use: { ...worksheet.use, [loadName(worksheet.tensioner)]: load },
      };
      expect(numbersOf(trialsOfPrediction(used)).high / limit).toBeCloseTo(1, 1.2);
      expect(reachAt(worksheet, load)).toBeLessThanOrEqual(limit * (1 + LAST_DIGITS));
    },
  );

  it('has the no-load torque in it: the straight line through the readings runs from there', () => {
    const worksheet = limited({ makerLimitStress: 90e6 });
    const { dragTorque, topTorque, stress } = numbersOf(evaluateWorksheet(worksheet).measured);
    const load = highest(worksheet) ?? 0;
    const line = (stress * (load - dragTorque)) / (topTorque - dragTorque);
    const { expandedUncertainty } = numbersOf(
      evaluateWorksheet({ ...worksheet, ways: [{ name: '', torque: load, readings: [] }] }).ways[0]
        ?.fromTorque ?? noWay,
    );
    expect(line + expandedUncertainty).toBeCloseTo(90e6, -5);
    expect(expandedUncertainty).toBeGreaterThan(1e6);
  });

  it('says what tells it: the readings, unless there are none or calculation reaches higher', () => {
    const told = (worksheet: Worksheet) => allowedIn(worksheet)?.by;
    expect(told(limited({ makerLimitStress: 90e6 }))).toBe('readings');
    expect(told(limited({ makerLimitStress: 250e6 }))).toBe('readings');
    const unread = { ...limited({ makerLimitStress: 90e6 }), readings: [] };
    expect(told(unread)).toBe('calculation');
    const apart = stretched(limited({ makerLimitStress: 250e6 }), 0.4);
    expect(told(apart)).toBe('calculation');
    expect(highest(apart)).toBeGreaterThan(numbersOf(evaluateWorksheet(apart).measured).topTorque);
  });

  it.each([millA, millD, stretched(millA, 0.4), stretched(millB, 3), stretched(millD, 1 / 3)])(
    'is the one load that parts those within from those beyond',
    (mill) => {
      const { topTorque } = numbersOf(evaluateWorksheet(mill).measured);
      const reached = Array.from({ length: 60 }, (_, step) =>
        reachAt(mill, (topTorque * (step + 1)) / 30),
      );
      expect(reached).toEqual([...reached].sort((a, b) => a - b));
      expect(reached.at(-1)).toBeGreaterThan(reached[0] ?? 0);
    },
  );

  it('counts the lower of the two limits', () => {
    const [both, band, wheel] = [
      { makerLimitStress: 90e6, makerLimitWheelForce: 6600 },
      { makerLimitStress: 90e6 },
      { makerLimitWheelForce: 6600 },
    ].map((limits) => highest(limited(limits)) ?? 0);
    expect(band).toBeLessThan(wheel ?? 0);
    expect(both).toBe(band);
  });

  it('is not known without a limit, without anything that tells the stress, nor below all that pulls', () => {
    expect(highest(limited({}))).toBeUndefined();
    const blind = limited({ makerLimitStress: 90e6 });
    const unsized = { ...blind.band, bodyWidth: undefined };
    expect(highest({ ...blind, readings: [], band: unsized })).toBeUndefined();
    expect(highest(limited({ makerLimitStress: 1 }))).toBeUndefined();
  });
});
