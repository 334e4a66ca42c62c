import { describe, expect, it } from 'vitest';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millA, millC } from '../fixtures/mills.ts';

describe('worksheetForces', () => {
  it('matches the hand-worked case: 106.8 MPa on 29 mm² is 3097 N, on two strands 6194 N', () => {
    const { strandForce, wheelForce } = numbersOf(evaluateWorksheet(millA).forces);
    expect(strandForce).toBeCloseTo(3097.2, 1);
    expect(wheelForce).toBeCloseTo(6194.4, 1);
  });

  it('takes the lean of the strands off the wheel', () => {
    const { strandForce, wheelForce } = numbersOf(evaluateWorksheet(millC).forces);
    expect(wheelForce / strandForce).toBeCloseTo(2 * Math.cos(Math.asin(0.05)), 12);
  });
});
