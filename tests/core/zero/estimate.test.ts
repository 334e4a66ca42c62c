import { describe, expect, it } from 'vitest';
import type { EnvelopeFit } from '../../../src/core/zero/envelope.ts';
import { envelopeEstimate, meanElongation, meanScatter } from '../../../src/core/zero/estimate.ts';

const fit = (weight: number, length: number, height: number, zero: number): EnvelopeFit => ({
  length,
  height,
  share: 1,
  weight,
  zeros: [zero],
  scaleZeros: [1e-6],
  elongation: 300e-6 - zero,
  scaleElongation: 2e-6,
  degreesOfFreedom: 8,
  scatter: 4e-6 + zero,
  toe: Float64Array.of(zero, 0),
});
const fits = [fit(0.2, 1, 0, 0), fit(0.5, 0.1, 10, 4e-6), fit(0.3, 0.3, 100, 10e-6)];

describe('envelopeEstimate', () => {
  const estimate = () => envelopeEstimate(fits, 0.95);
  it('takes weighted means of zero, elongation and toe', () => {
    expect(estimate().zeros[0]?.value).toBeCloseTo(5e-6, 15);
    expect(estimate().elongation.value).toBeCloseTo(295e-6, 15);
    expect(meanElongation(fits)).toBeCloseTo(295e-6, 15);
    expect(meanScatter(fits)).toBeCloseTo(9e-6, 15);
    expect(estimate().toe[0]).toBeCloseTo(5e-6, 15);
    expect(estimate().toe[1]).toBe(0);
    expect(estimate().degreesOfFreedom).toBe(8);
  });
  it('holds the value between the ends of its interval', () => {
    expect(estimate().zeros[0]?.low).toBeLessThan(0);
    expect(estimate().zeros[0]?.high).toBeGreaterThan(10e-6);
  });
  it('tells how likely no toe is, and a long one; height 0 has no length', () => {
    expect(estimate().probabilityNoToe).toBe(0.2);
    expect(estimate().probabilityLongToe).toBe(0.3);
  });
  it.each([
    [0.2, 10, 1],
    [0.2, 9, 0],
    [0.19, 10, 0],
    [0.3, 3, 0],
    [0.13, 100, 0],
  ])(
    'calls a toe long from a length of 0.2 and a height of 10 on: %s and %s give %s',
    (length, height, long) =>
      expect(envelopeEstimate([fit(1, length, height, 0)], 0.95).probabilityLongToe).toBe(long),
  );
});
