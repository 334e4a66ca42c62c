import { describe, expect, it } from 'vitest';
import type { WorksheetCollar } from '../../../../src/core/worksheet/inputs.ts';
import { worksheetCollar } from '../../../../src/core/worksheet/predict/collar.ts';
import { numbersOf, refusalOf } from '../../fixtures/ready.ts';
import { millA } from '../fixtures/mills.ts';

const collarOf = (collar: WorksheetCollar) => worksheetCollar({ ...millA.tensioner, collar });
const empty = { outerDiameter: undefined, innerDiameter: undefined };
const washer = (low?: number, high?: number, ring: object = empty) =>
  collarOf({ kind: 'washer', frictionLow: low, frictionHigh: high, ...empty, ...ring });

describe('worksheetCollar', () => {
  it('matches the hand-worked case: 42 and 20 mm rub at 31 mm, with 0.12 ± 30 %', () => {
    const ring = { outerDiameter: 0.042, innerDiameter: 0.02 };
    const collar = numbersOf(washer(0.12, undefined, ring));
    expect(collar).toMatchObject({ collarFriction: 0.12, frictionHalfWidth: 0.3 * 0.12 });
    expect(collar.collarDiameter).toBeCloseTo(0.031, 12);
    expect(collar.diameterHalfWidth).toBe(0);
    expect(washer(undefined, 0.12, ring)).toEqual(collar);
  });

  it('takes both ends of a friction', () => {
    const collar = numbersOf(washer(0.08, 0.16));
    expect(collar.collarFriction).toBeCloseTo(0.12, 12);
    expect(collar.frictionHalfWidth).toBeCloseTo(0.04, 12);
    expect(collar).toMatchObject({ between: { low: 0.08, high: 0.16 }, isAssumed: false });
  });

  it('is nothing where there is none', () =>
    expect(collarOf({ kind: 'none' })).toMatchObject({ collarFriction: 0, collarDiameter: 0 }));

  it('has the washer of Tr20, 37 and 21 mm, give or take a tenth, for sizes left empty', () => {
    const collar = numbersOf(washer());
    expect(collar.collarDiameter).toBeCloseTo(0.029, 12);
    expect(collar.diameterHalfWidth).toBeCloseTo(0.0029, 12);
    expect(collar).toMatchObject({ between: { low: 0.06, high: 0.2 }, isAssumed: true });
    expect(numbersOf(washer(0.1, 0.1, { outerDiameter: 0.041 })).collarDiameter).toBeCloseTo(0.031);
  });

  it('may be a ball bearing or a washer where nothing is said', () => {
    const collar = numbersOf(collarOf({ kind: 'unknown' }));
    expect(collar.mayBeBearing).toBe(true);
    expect(collar).toMatchObject({ between: { low: 0.003, high: 0.2 }, isAssumed: true });
  });

  it('waits for the thread where the washer hangs on it, and only there', () => {
    const thread = { kind: 'designation', designation: '' } as const;
    const waiting = { ready: false, waitsFor: ['tensioner.thread.designation'] };
    const bearing = { kind: 'bearing', ...empty } as const;
    expect(worksheetCollar({ ...millA.tensioner, thread, collar: bearing })).toEqual(waiting);
    expect(worksheetCollar({ ...millA.tensioner, thread }).ready).toBe(true);
  });

  it('refuses a hole as large as its ring, and ends the wrong way round', () => {
    const inside = { outerDiameter: 0.02, innerDiameter: 0.02 };
    expect(washer(0.1, 0.1, inside)).toEqual({
      ready: false,
      waitsFor: ['tensioner.collar.outerDiameter', 'tensioner.collar.innerDiameter'],
      refusal: { code: 'collarInsideOut', values: inside },
    });
    expect(refusalOf(washer(0.1, 0.1, { ...inside, innerDiameter: 0.019 }))).toBeUndefined();
    expect(washer(0.2, 0.1)).toEqual({
      ready: false,
      waitsFor: ['tensioner.collar.frictionLow', 'tensioner.collar.frictionHigh'],
      refusal: { code: 'rangeBackwards', values: { low: 0.2, high: 0.1 } },
    });
    expect(refusalOf(washer(-0.1))).toBe('outOfRange');
    expect(washer(-0.1, 0.1)).toMatchObject({ waitsFor: ['tensioner.collar.frictionLow'] });
    expect(washer(0.1, -0.1)).toMatchObject({ waitsFor: ['tensioner.collar.frictionHigh'] });
    for (const side of ['outerDiameter', 'innerDiameter'])
      expect(washer(0.1, 0.1, { [side]: -0.02 })).toMatchObject({
        waitsFor: [`tensioner.collar.${side}`],
      });
  });
});
