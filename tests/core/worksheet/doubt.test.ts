import { describe, expect, it } from 'vitest';
import { relativeDoubt } from '../../../src/core/worksheet/doubt.ts';
import { worksheetMeasurement } from '../../../src/core/worksheet/measure/measurement.ts';
import { numbersOf } from '../fixtures/ready.ts';
import { millA } from './fixtures/mills.ts';

const measured = () => numbersOf(worksheetMeasurement(millA).measured);

describe('relativeDoubt', () => {
  it('matches the hand-worked case of mill A at 14.91 N·m: 9.8 MPa in 110', () =>
    expect(relativeDoubt(measured(), 14.91)).toBeCloseTo(9.8 / 110, 4));

  it('is never below what the wrench repeats to, and grows towards the drag', () => {
    expect(relativeDoubt({ ...measured(), standardUncertainty: 0 }, 1e9)).toBeCloseTo(0.01, 9);
    expect(relativeDoubt(measured(), 1)).toBeGreaterThan(relativeDoubt(measured(), 2));
  });
});
