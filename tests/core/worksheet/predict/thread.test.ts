import { describe, expect, it } from 'vitest';
import type { WorksheetThread } from '../../../../src/core/worksheet/inputs.ts';
import { worksheetThread } from '../../../../src/core/worksheet/predict/thread.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millA, millF } from '../fixtures/mills.ts';

const shapeOf = (thread: WorksheetThread, starts: number | undefined = 1) =>
  worksheetThread({ ...millA.tensioner, thread, starts });
const named = (designation: string) => shapeOf({ kind: 'designation', designation });
const own = (outsideDiameter: number | undefined, pitch: number | undefined) =>
  shapeOf({ kind: 'own', form: 'trapezoidal', outsideDiameter, pitch });

describe('worksheetThread', () => {
  it('reads Tr20x4 as pitch diameter 18 mm, lead 4 mm, 15° (ISO 2901)', () => {
    const shape = numbersOf(named('Tr20x4'));
    expect(shape.meanDiameter).toBeCloseTo(18e-3, 12);
    expect(shape.lead).toBeCloseTo(4e-3, 12);
    expect(shape.halfAngle).toBeCloseTo((15 * Math.PI) / 180, 12);
  });

  it('gives the same for its own measures', () =>
    expect(own(20e-3, 4e-3)).toEqual(named('Tr20x4')));

  it('multiplies the pitch by the starts', () =>
    expect(numbersOf(worksheetThread(millF.tensioner)).lead).toBeCloseTo(10.16e-3, 12));

  it('waits while nothing is named', () => {
    const waiting = { ready: false, waitsFor: ['tensioner.thread.designation'] };
    expect(named('')).toEqual(waiting);
    expect(named('  ')).toEqual(waiting);
    const measures = ['tensioner.thread.outsideDiameter', 'tensioner.thread.pitch'];
    expect(own(undefined, undefined)).toEqual({ ready: false, waitsFor: measures });
    expect(shapeOf({ kind: 'designation', designation: 'Tr20x4' }, Number.NaN)).toMatchObject({
      waitsFor: ['tensioner.starts'],
    });
  });

  it('reads a pitch that no list has as it reads the same measures', () =>
    expect(numbersOf(named('Tr 24x4, single'))).toEqual(numbersOf(own(24e-3, 4e-3))));

  it('refuses what is no thread', () =>
    expect(named('a bolt')).toEqual({
      ready: false,
      waitsFor: ['tensioner.thread.designation'],
      refusal: { code: 'threadUnknown', values: {} },
    }));

  it('refuses a pitch that leaves no core', () => {
    expect(own(20e-3, 10e-3)).toEqual({
      ready: false,
      waitsFor: ['tensioner.thread.outsideDiameter', 'tensioner.thread.pitch'],
      refusal: { code: 'pitchTooCoarse', values: { majorDiameter: 20e-3, pitch: 10e-3 } },
    });
    expect(own(20e-3, 9.9e-3).ready).toBe(true);
  });

  it('refuses a lead in the wrong unit: by hand, 28 mm on 18 mm climb 26.3°, of 25° at most', () => {
    const steep = { kind: 'designation', designation: 'Tr20x4' } as const;
    const degree = Math.PI / 180;
    expect(shapeOf(steep, 7)).toEqual({
      ready: false,
      waitsFor: ['tensioner.thread', 'tensioner.starts'],
      refusal: {
        code: 'leadTooSteep',
        values: {
          angle: expect.closeTo(Math.atan(28 / (18 * Math.PI)), 12),
          steepest: expect.closeTo(25 * degree, 12),
        },
      },
    });
    expect(shapeOf(steep, 6).ready).toBe(true);
  });
});
