import { describe, expect, it } from 'vitest';
import type { Worksheet } from '../../src/core/worksheet-form.ts';
import { worksheetMeasurement } from '../../src/core/worksheet-measurement.ts';
import { dragDoubt } from '../../src/core/worksheet-stress-inputs.ts';
import { numbersOf, refusalOf } from './fixtures/ready.ts';
import { millA } from './fixtures/worksheet-mills.ts';

const inputsOf = (worksheet: Worksheet) => worksheetMeasurement(worksheet).inputs;
const withDials = (dials: (row: number) => number): Worksheet => ({
  ...millA,
  readings: millA.readings.map((reading, row) => ({ ...reading, dial: dials(row) })),
});

describe('worksheetStressInputs', () => {
  it('carries the drag into the stretch by its slope: 208 µm over 13.7 N·m, times 0.1 N·m', () => {
    const { drag, stretch } = numbersOf(inputsOf(millA));
    expect(stretch.value).toBeCloseTo(208.02e-6, 7);
    expect(drag.standardUncertainty).toBeCloseTo((208.02e-6 / 13.7) * 0.1, 9);
    expect(stretch.degreesOfFreedom).toBe(10);
  });

  it('refuses a stress where the zero is too vague', () =>
    expect(refusalOf(inputsOf(withDials((row) => (row % 2) * 60e-6 - row * 5e-6)))).toBe(
      'zeroTooVague',
    ));

  it('refuses more stretch than steel springs back from', () =>
    expect(refusalOf(inputsOf(withDials((row) => -row * 0.2e-3)))).toBe('tooMuchStretch'));

  it('waits for the doubt of the drag torque, which may be none', () => {
    const tensioner = { ...millA.tensioner, dragTorqueUncertainty: undefined };
    expect(inputsOf({ ...millA, tensioner })).toEqual({
      ready: false,
      waitsFor: ['tensioner.dragTorqueUncertainty'],
    });
    const sure = { ...millA, tensioner: { ...tensioner, dragTorqueUncertainty: 0 } };
    expect(numbersOf(dragDoubt(sure)).uncertainty).toBe(0);
    expect(numbersOf(inputsOf(sure)).drag.standardUncertainty).toBe(0);
  });
});
