import { describe, expect, it } from 'vitest';
import type { WayResult } from '../../../../src/core/worksheet/decide/ways.ts';
import { worksheetWays } from '../../../../src/core/worksheet/decide/ways.ts';
import type { Worksheet, WorksheetWay } from '../../../../src/core/worksheet/inputs.ts';
import { worksheetMeasurement } from '../../../../src/core/worksheet/measure/measurement.ts';
import { ready } from '../../../../src/core/worksheet/outcome.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { worksheetMillResults } from '../fixtures/mill-results.ts';
import { millA } from '../fixtures/mills.ts';

const results = () => evaluateWorksheet(millA);
const dials = (...values: number[]) => values.map((dial) => ({ dial, wholeTurns: undefined }));
const wayOf = (way: Partial<WorksheetWay>, worksheet: Worksheet = millA) => {
  const ways = [{ name: 'paint mark', torque: undefined, readings: [], ...way }];
  return evaluateWorksheet({ ...worksheet, ways }).ways[0] as WayResult;
};

describe('a way by its torque', () => {
  it('comes to the measured stress at the top torque, with the wrench’s own doubt added', () => {
    const way = numbersOf(wayOf({ torque: 14.5 }).fromTorque);
    const measured = numbersOf(results().measured);
    expect(way.stress / measured.stress).toBeCloseTo(1, 12);
    expect(way.stretch).toBeCloseTo(measured.operands.stretch, 12);
    expect(way.standardUncertainty).toBeGreaterThan(measured.standardUncertainty);
    expect(way.high - way.low).toBeCloseTo(2 * way.expandedUncertainty, 3);
    expect(way.expandedUncertainty / way.standardUncertainty).toBeCloseTo(
      measured.coverageFactor,
      12,
    );
  });

  it('comes to the target at the setting', () => {
    const setting = numbersOf(results().setting);
    const way = numbersOf(wayOf({ torque: setting.torque }).fromTorque);
    expect(way.stress / setting.stress).toBeCloseTo(1, 12);
    expect(way.standardUncertainty / setting.standardUncertainty).toBeCloseTo(1, 12);
  });

  it('waits for a torque, and refuses one at the drag', () => {
    expect(wayOf({}).fromTorque).toEqual({ ready: false, waitsFor: ['ways.0.torque'] });
    expect(wayOf({ torque: 0.8 }).fromTorque).toEqual({
      ready: false,
      waitsFor: ['ways.0.torque'],
      refusal: { code: 'belowDrag', values: { torque: 0.8, dragTorque: 0.8 } },
    });
  });
});

describe('a way by its own readings', () => {
  it('matches the hand-worked case: 0.350 and 0.340 mm are 125 µm from the first, 172.45 from zero', () => {
    const way = numbersOf(wayOf({ readings: dials(0.35e-3, 0.34e-3) }).fromReadings);
    expect(way.stretch).toBeCloseTo(172.453e-6, 8);
    expect(way.stress).toBeCloseTo((205e9 * 172.453e-6) / (0.4 * 0.99822), -3);
  });

  it('is surer with more readings, but never surer than the zero', () => {
    const doubt = (...values: number[]) =>
      numbersOf(wayOf({ readings: dials(...values) }).fromReadings).standardUncertainty;
    const many = doubt(...Array.from({ length: 50 }, () => 0.35e-3));
    expect(many).toBeLessThan(doubt(0.35e-3));
    const zero = numbersOf(results().zero).standardUncertainty;
    expect(many).toBeGreaterThan((205e9 * zero) / 0.4);
  });

  it('has the weight of the bar taken out of them too', () => {
    const rig = { ...millA.rig, barHeight: 0.012, barWeight: 1 };
    const way = wayOf({ readings: dials(0.315e-3) }, { ...millA, rig });
    const zero = numbersOf(evaluateWorksheet({ ...millA, rig }).zero);
    const shown = 155e-6 - zero.zero;
    const share = shown / zero.stretch.stretch;
    expect(numbersOf(way.fromReadings).stretch).toBeCloseTo(shown + zero.barShiftAtTop / share, 12);
  });

  it('waits for readings it can use', () => {
    const waiting = { ready: false, waitsFor: ['ways.0.readings'] };
    expect(wayOf({}).fromReadings).toEqual(waiting);
    expect(wayOf({ readings: dials(Number.NaN) }).fromReadings).toEqual(waiting);
  });

  it('refuses a band that is not tight: 0.6 mm is 130 µm back from the first', () =>
    expect(wayOf({ readings: dials(0.6e-3) }).fromReadings).toEqual({
      ready: false,
      waitsFor: ['ways.0.readings'],
      refusal: {
        code: 'belowZero',
        values: { stretch: expect.closeTo(-130e-6 - worksheetMillResults.A.zero, 10) },
      },
    }));

  it('is not tight at the zero itself', () => {
    const shown = worksheetMeasurement(millA);
    const zero = ready({ ...numbersOf(shown.zero), zero: 0 }); // at the first reading
    const atZero = { name: 'slack', torque: undefined, readings: dials(0.47e-3) };
    const [way] = worksheetWays({ ...millA, ways: [atZero] }, { ...shown, zero });
    expect(way?.fromReadings).toMatchObject({
      refusal: { code: 'belowZero', values: { stretch: 0 } },
    });
  });
});

describe('the ways', () => {
  it('keep their names and order, and each waits on its own', () => {
    const ways = [
      { name: 'mark', torque: 12, readings: [] },
      { name: 'spring', torque: undefined, readings: dials(0.35e-3) },
    ];
    const found = evaluateWorksheet({ ...millA, ways }).ways;
    expect(found.map(({ name }) => name)).toEqual(['mark', 'spring']);
    expect(
      found.map(({ fromTorque, fromReadings }) => [fromTorque.ready, fromReadings.ready]),
    ).toEqual([
      [true, false],
      [false, true],
    ]);
  });
});
