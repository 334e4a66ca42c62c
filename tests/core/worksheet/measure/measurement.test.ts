import { describe, expect, it } from 'vitest';
import { emptyWorksheet } from '../../../../src/core/worksheet/inputs.ts';
import { worksheetMeasurement } from '../../../../src/core/worksheet/measure/measurement.ts';
import { millA } from '../fixtures/mills.ts';

describe('worksheetMeasurement', () => {
  it('is complete for a filled worksheet and waits for an empty one', () => {
    const { verdict: good, ...full } = worksheetMeasurement(millA);
    for (const outcome of Object.values(full)) expect(outcome.ready).toBe(true);
    const { verdict: waiting, ...bare } = worksheetMeasurement(emptyWorksheet);
    for (const outcome of Object.values(bare)) expect(outcome.ready).toBe(false);
    expect([good.grade, waiting.grade]).toEqual(['good', 'waiting']);
  });

  it('needs neither wheels nor screw for the stress', () => {
    const { mill, tensioner } = emptyWorksheet;
    const { dragTorque, dragTorqueUncertainty } = millA.tensioner;
    const bare = { ...millA, mill, tensioner: { ...tensioner, dragTorque, dragTorqueUncertainty } };
    expect(worksheetMeasurement(bare).measured).toEqual(worksheetMeasurement(millA).measured);
  });
});
