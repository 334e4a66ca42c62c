import { describe, expect, it } from 'vitest';
import { worksheetTurns } from '../../../../src/core/worksheet/decide/turns.ts';
import type { Worksheet, WorksheetReading } from '../../../../src/core/worksheet/inputs.ts';
import type { MeasuredPoint } from '../../../../src/core/worksheet/measure/line.ts';
import { ready } from '../../../../src/core/worksheet/outcome.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf, refusalOf } from '../../fixtures/ready.ts';
import { worksheetMillResults } from '../fixtures/mill-results.ts';
import { millA, millC, worksheetMills } from '../fixtures/mills.ts';

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

// Section 29 mm², screw of 4 mm in line, as of mill A.
const spanOf = (points: readonly MeasuredPoint[], worksheet = millA) =>
  worksheetTurns(worksheet, ready({ points }), evaluateWorksheet(millA).efficiency);
const point = (torque: number, stress: number, turns?: number, inToe = false): MeasuredPoint => ({
  row: 0,
  series: 1,
  torque,
  stress,
  turns,
  sdTorque: 0.1,
  sdStress: 1e6,
  inToe,
});
const [low, high] = [point(4, 20e6, 0.125), point(12, 100e6, 0.5)];

describe('worksheetTurns', () => {
  it('tells what it divides: 80 MPa on two strands of 29 mm² over 0.375 turns of 4 mm', () => {
    const { operands, totalStiffness } = numbersOf(spanOf([low, high]));
    expect(operands.wheelForce).toBeCloseTo(2 * 80e6 * 29e-6, 6);
    expect(operands).toMatchObject({ turns: 0.375, lead: 0.004, advantage: 1 });
    expect(totalStiffness).toBeCloseTo(operands.wheelForce / 0.0015, 3);
  });

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

  it.each([
    ['mill.wheelDiameter1', { ...millC, mill: { ...millC.mill, wheelDiameter1: Number.NaN } }],
    ['mill.wheelDiameter2', { ...millC, mill: { ...millC.mill, wheelDiameter2: Number.NaN } }],
    [
      'mill.wheelDiameter1',
      { ...millA, mill: { ...millA.mill, wheelDiameter1: undefined, wheelDiameter2: undefined } },
    ],
    ['mill.centreDistance', { ...millC, mill: { ...millC.mill, centreDistance: Number.NaN } }],
    ['band.thickness', { ...millC, band: { ...millC.band, thickness: Number.NaN } }],
    ['band.youngsModulus', { ...millC, band: { ...millC.band, youngsModulus: Number.NaN } }],
  ])('waits for %s', (box, worksheet) =>
    expect(spanOf([low, high], worksheet)).toMatchObject({ ready: false, waitsFor: [box] }),
  );
});

describe('the span of the turns', () => {
  const toe = point(3, 15e6, 0, true);
  const between = point(9, 70e6, 0.375);
  const [below, amid, above] = [point(3.5, 18e6), point(7, 55e6), point(14, 120e6)];

  it.each([
    ['as they rise', [toe, below, low, amid, between, high, above]],
    ['as they fall', [above, high, between, amid, low, below, toe]],
    ['out of order', [between, amid, above, low, toe, high, below]],
  ])('matches the hand-worked case with rows %s: 4640 N over 1.5 mm', (_, points) =>
    expect(numbersOf(spanOf(points)).totalStiffness).toBeCloseTo(4640 / 1.5e-3, 3),
  );

  it('misses no turns where there are just those that the band alone needs', () => {
    const { bandStiffness } = numbersOf(spanOf([low, high]));
    const stress = (bandStiffness * 0.5 * 4e-3) / (2 * 29e-6); // over half a turn
    const found = numbersOf(spanOf([point(4, 0, 0), point(12, stress, 0.5)]));
    expect(found.totalStiffness).toBe(bandStiffness);
    expect(found).toMatchObject({ supportStiffness: undefined, fewerTurnsThanBand: false });
  });

  it('waits while one row alone has its turns', () =>
    expect(spanOf([below, low, above])).toEqual({ ready: false, waitsFor: ['readings'] }));

  it.each([
    ['turns that stand still', point(12, 100e6, 0.125), { turns: 0, stress: 80e6 }],
    ['turns that fall', point(12, 100e6, 0), { turns: -0.125, stress: 80e6 }],
    ['a stress that stands still', point(12, 20e6, 0.5), { turns: 0.375, stress: 0 }],
    ['a stress that falls', point(12, 10e6, 0.5), { turns: 0.375, stress: -10e6 }],
  ])('refuses %s', (_, top, values) =>
    expect(spanOf([low, top])).toEqual({
      ready: false,
      waitsFor: ['readings'],
      refusal: { code: 'turnsFall', values },
    }),
  );
});

describe('the turns of several series', () => {
  it('are counted within one, the one that shows most', () => {
    const [narrow, wide] = [point(6, 40e6, 3), point(8, 60e6, 3.1)];
    const other = [narrow, wide].map((each) => ({ ...each, series: 2 }));
    const { operands } = numbersOf(spanOf([...other, low, high]));
    expect(operands.turns).toBeCloseTo(0.375, 12);
    expect(operands).toEqual(numbersOf(spanOf([low, high, ...other])).operands);
  });
});
