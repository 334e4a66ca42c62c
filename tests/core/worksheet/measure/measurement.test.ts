import { describe, expect, it } from 'vitest';
import { emptyWorksheet } from '../../../../src/core/worksheet/empty.ts';
import { worksheetMeasurement } from '../../../../src/core/worksheet/measure/measurement.ts';
import { millA } from '../fixtures/mills.ts';

describe('worksheetMeasurement', () => {
  it('is complete for a filled worksheet and waits for an empty one', () => {
    const { dialRuns: said, verdict: good, ...filled } = worksheetMeasurement(millA);
    const { dialRuns: open, verdict: waiting, ...empty } = worksheetMeasurement(emptyWorksheet);
    expect([said, open]).toEqual([{ backwards: true, isSaid: true }, undefined]);
    for (const outcome of Object.values(filled)) expect(outcome.ready).toBe(true);
    for (const outcome of Object.values(empty)) expect(outcome.ready).toBe(false);
    expect([good.grade, waiting.grade]).toEqual(['good', 'waiting']);
  });

  it('needs neither wheels nor screw for the stress', () => {
    const { mill, tensioner } = emptyWorksheet;
    const { dragTorque, dragTorqueUncertainty } = millA.tensioner;
    const bare = { ...millA, mill, tensioner: { ...tensioner, dragTorque, dragTorqueUncertainty } };
    expect(worksheetMeasurement(bare).measured).toEqual(worksheetMeasurement(millA).measured);
  });
});
