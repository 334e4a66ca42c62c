import { describe, expect, it } from 'vitest';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { worksheetMeasurement } from '../../../../src/core/worksheet/measure/measurement.ts';
import { worksheetStressScale } from '../../../../src/core/worksheet/measure/stress.ts';
import { worksheetStressInputs } from '../../../../src/core/worksheet/measure/stress-inputs.ts';
import { ready } from '../../../../src/core/worksheet/outcome.ts';
import { numbersOf, refusalOf } from '../../fixtures/ready.ts';
import { millA } from '../fixtures/mills.ts';

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

  it('refuses a stress where the zero is too vague, with the range it may lie in', () => {
    const { zero, inputs } = worksheetMeasurement(
      withDials((row) => (row % 2) * 60e-6 - row * 5e-6),
    );
    const { low, high } = numbersOf(zero);
    expect(inputs).toEqual({
      ready: false,
      waitsFor: ['readings'],
      refusal: { code: 'zeroTooVague', values: { low, high } },
    });
  });

  it('refuses more stretch than steel springs back from: by hand, 2.74 mm on 400 mm', () => {
    const torque = (row: number) => millA.readings[row]?.torque as number;
    const inputs = inputsOf(withDials((row) => -0.2e-3 * (torque(row) - 0.8)));
    expect(inputs).toEqual({
      ready: false,
      waitsFor: ['readings', 'rig.gaugeLength'],
      refusal: { code: 'tooMuchStretch', values: { strain: expect.closeTo(2.74 / 400, 9) } },
    });
  });

  it('believes steel to spring back from 0.4 % just', () => {
    const { zero } = worksheetMeasurement(millA);
    const scale = worksheetStressScale({ ...millA, rig: { ...millA.rig, gaugeLength: 0.5 } });
    const stretched = (stretch: number) => {
      const found = numbersOf(zero);
      const most = ready({ ...found, stretch: { ...found.stretch, stretch } });
      return refusalOf(worksheetStressInputs(millA, most, scale));
    };
    expect(stretched(2e-3)).toBeUndefined();
    expect(stretched(2.001e-3)).toBe('tooMuchStretch');
  });

  it('waits for the doubt of the drag torque, which may be none', () => {
    const tensioner = { ...millA.tensioner, dragTorqueUncertainty: undefined };
    expect(inputsOf({ ...millA, tensioner })).toEqual({
      ready: false,
      waitsFor: ['tensioner.dragTorqueUncertainty'],
    });
    const sure = { ...millA, tensioner: { ...tensioner, dragTorqueUncertainty: 0 } };
    expect(numbersOf(inputsOf(sure)).drag.standardUncertainty).toBe(0);
  });
});
