import { describe, expect, it } from 'vitest';
import { worksheetGraduation } from '../../../../src/core/worksheet/measure/graduation.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millA } from '../fixtures/mills.ts';

describe('worksheetGraduation', () => {
  it('gives 10 µm on 400 mm of steel its 5.125 MPa', () => {
    const rig = { ...millA.rig, graduation: 10e-6, gaugeLength: 0.4 };
    const band = { ...millA.band, youngsModulus: 205e9 };
    const { stress, operands } = numbersOf(worksheetGraduation({ ...millA, rig, band }));
    expect(stress).toBeCloseTo(5.125e6, 3);
    expect(operands).toEqual({ graduation: 10e-6, gaugeLength: 0.4, youngsModulus: 205e9 });
  });

  it.each([
    ['rig.graduation', { ...millA, rig: { ...millA.rig, graduation: undefined } }],
    ['rig.gaugeLength', { ...millA, rig: { ...millA.rig, gaugeLength: undefined } }],
    ['band.youngsModulus', { ...millA, band: { ...millA.band, youngsModulus: undefined } }],
  ])('waits for %s', (path, worksheet) =>
    expect(worksheetGraduation(worksheet)).toEqual({ ready: false, waitsFor: [path] }),
  );
});
