import { describe, expect, it } from 'vitest';
import type { WorksheetThread } from '../../src/core/worksheet-form.ts';
import { worksheetThread } from '../../src/core/worksheet-thread.ts';
import { numbersOf, refusalOf } from './fixtures/ready.ts';
import { millA, millF } from './fixtures/worksheet-mills.ts';

const shapeOf = (thread: WorksheetThread, starts: number | undefined = 1) =>
  worksheetThread({ ...millA.tensioner, thread, starts });
const named = (designation: string) => shapeOf({ kind: 'designation', designation });
const own = (outsideDiameter: number | undefined, pitch: number) =>
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
    expect(own(undefined, 4e-3)).toMatchObject({ waitsFor: ['tensioner.thread.outsideDiameter'] });
    expect(shapeOf({ kind: 'designation', designation: 'Tr20x4' }, Number.NaN)).toMatchObject({
      waitsFor: ['tensioner.starts'],
    });
  });

  it('refuses what is no thread, a pitch that leaves no core, and a lead in the wrong unit', () => {
    expect(refusalOf(named('a bolt'))).toBe('threadUnknown');
    expect(refusalOf(own(20e-3, 10e-3))).toBe('pitchTooCoarse');
    expect(refusalOf(own(20e-3, 9.9e-3))).toBeUndefined();
    const steep = { kind: 'designation', designation: 'Tr20x4' } as const;
    expect(refusalOf(shapeOf(steep, 7))).toBe('leadTooSteep');
    expect(refusalOf(shapeOf(steep, 6))).toBeUndefined();
  });
});
