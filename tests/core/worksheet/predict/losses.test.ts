import { describe, expect, it } from 'vitest';
import type { WorksheetFriction } from '../../../../src/core/worksheet/inputs.ts';
import {
  worksheetCollar,
  worksheetLossRange,
} from '../../../../src/core/worksheet/predict/losses.ts';
import { numbersOf, refusalOf } from '../../fixtures/ready.ts';
import { millA } from '../fixtures/mills.ts';

const range = (friction: WorksheetFriction) => worksheetLossRange({ ...millA.tensioner, friction });
const collar = (friction: number, outerDiameter: number, innerDiameter: number) =>
  worksheetCollar({ ...millA.tensioner, collar: { friction, outerDiameter, innerDiameter } });

describe('worksheetLossRange', () => {
  it('takes a range, of no width at least', () => {
    expect(range({ kind: 'friction', low: 0.1, high: 0.18 })).toMatchObject({
      low: 0.1,
      high: 0.18,
    });
    expect(range({ kind: 'friction', low: 0.1, high: 0.1 }).ready).toBe(true);
  });

  it('refuses one the wrong way round, and more efficiency than there is, with their boxes', () => {
    expect(range({ kind: 'friction', low: 0.2, high: 0.1 })).toEqual({
      ready: false,
      waitsFor: ['tensioner.friction.low', 'tensioner.friction.high'],
      refusal: { code: 'rangeBackwards', values: { low: 0.2, high: 0.1 } },
    });
    expect(range({ kind: 'efficiency', low: 0.2, high: 1.1 })).toEqual({
      ready: false,
      waitsFor: ['tensioner.friction.high'],
      refusal: { code: 'efficiencyAboveOne', values: { high: 1.1 } },
    });
  });

  it('waits for its two ends by their boxes', () =>
    expect(range({ kind: 'friction', low: undefined, high: undefined })).toEqual({
      ready: false,
      waitsFor: ['tensioner.friction.low', 'tensioner.friction.high'],
    }));

  it('lets an efficiency of one pass, and a friction above it', () => {
    expect(refusalOf(range({ kind: 'efficiency', low: 0.2, high: 1 }))).toBeUndefined();
    expect(refusalOf(range({ kind: 'friction', low: 0.2, high: 1.1 }))).toBeUndefined();
  });
});

describe('worksheetCollar', () => {
  it('matches the hand-worked case: 42 and 20 mm rub at 31 mm', () => {
    const { collarFriction, collarDiameter } = numbersOf(collar(0.004, 0.042, 0.02));
    expect(collarFriction).toBe(0.004);
    expect(collarDiameter).toBeCloseTo(0.031, 12);
  });

  it('is nothing where there is none', () =>
    expect(worksheetCollar({ ...millA.tensioner, collar: undefined })).toEqual({
      ready: true,
      collarFriction: 0,
      collarDiameter: 0,
    }));

  it('waits for its boxes by their names', () => {
    const empty = { friction: undefined, outerDiameter: undefined, innerDiameter: undefined };
    expect(worksheetCollar({ ...millA.tensioner, collar: empty })).toEqual({
      ready: false,
      waitsFor: [
        'tensioner.collar.friction',
        'tensioner.collar.outerDiameter',
        'tensioner.collar.innerDiameter',
      ],
    });
  });

  it('refuses a hole as large as its ring', () => {
    expect(collar(0.1, 0.02, 0.02)).toEqual({
      ready: false,
      waitsFor: ['tensioner.collar.outerDiameter', 'tensioner.collar.innerDiameter'],
      refusal: {
        code: 'collarInsideOut',
        values: { outerDiameter: 0.02, innerDiameter: 0.02 },
      },
    });
    expect(refusalOf(collar(0.1, 0.02, 0.019))).toBeUndefined();
  });
});
