/** The normalized gain: worked by hand, at its limits, and its uncertainty against leaving out one learner at a time. */
import { describe, expect, it } from 'vitest';
import { classGain, gainBand, normalizedGain } from '../../../src/core/statistics/gain.ts';

const CLASS = [
  { before: 0.2, after: 0.5 },
  { before: 0.4, after: 0.8 },
  { before: 0.3, after: 0.7 },
  { before: 0.5, after: 0.6 },
  { before: 0.1, after: 0.6 },
  { before: 0.6, after: 1 },
];

describe('the normalized gain', () => {
  it('is the share of what could still be learned', () =>
    expect(normalizedGain({ before: 0.5, after: 0.8 })).toBeCloseTo(0.6, 12));

  it('is the slope of a straight line through 100 % before and nothing gained', () => {
    // As in the paper's plot of actual gain over the score before (Hake 1998, figure 1, from memory).
    const gain = 0.48;
    for (const before of [0.1, 0.35, 0.6, 0.9]) {
      const after = before + gain * (1 - before);
      expect(normalizedGain({ before, after })).toBeCloseTo(gain, 12);
    }
  });

  it('is 1 where all is right afterwards, 0 where nothing changed, below 0 where less is right', () => {
    expect(normalizedGain({ before: 0.3, after: 1 })).toBe(1);
    expect(normalizedGain({ before: 0.3, after: 0.3 })).toBe(0);
    expect(normalizedGain({ before: 0.5, after: 0.4 })).toBeCloseTo(-0.2, 12);
  });

  it.each([
    [{ before: 1, after: 1 }, 'before must be below 1'],
    [{ before: -0.1, after: 1 }, 'before must be at least 0'],
    [{ before: 0.1, after: 1.1 }, 'after must be at most 1'],
    [{ before: Number.NaN, after: 1 }, 'before must be'],
  ])('refuses %o', (scores, reason) => {
    expect(() => normalizedGain(scores)).toThrow(RangeError);
    expect(() => normalizedGain(scores)).toThrow(reason);
  });
});

describe('the band of a gain', () => {
  it('of the paper’s two kinds of courses is low for lectures, medium for courses that engage', () => {
    // Averages of 14 and of 48 courses, 0.23 and 0.48 (Hake 1998, abstract, from memory).
    expect([gainBand(0.23), gainBand(0.48)]).toEqual(['low', 'medium']);
  });

  it('begins where the paper has it', () => {
    expect([0.299, 0.3, 0.699, 0.7].map(gainBand)).toEqual(['low', 'medium', 'medium', 'high']);
    expect(gainBand(-0.5)).toBe('low');
  });

  it('is none of what is no number', () => expect(() => gainBand(Number.NaN)).toThrow(RangeError));
});

describe('the gain of a class', () => {
  it('comes from the class’s averages, not from the average of the learners’ gains', () => {
    const { before, after, gain } = classGain(CLASS, 0.95);
    expect(before).toBeCloseTo(0.35, 12);
    expect(after).toBeCloseTo(0.7, 12);
    expect(gain).toBeCloseTo(0.35 / 0.65, 12);
  });

  it('has the uncertainty that leaving out one learner at a time shows', () => {
    // The jackknife of Quenouille and Tukey, from memory: an independent way to the same standard error.
    const n = 40;
    const learners = Array.from({ length: n }, (_, i) => ({
      before: ((i * 7) % 11) / 20,
      after: 0.45 + ((i * 5) % 9) / 18,
    }));
    const without = learners.map(
      (_, left) =>
        classGain(
          learners.filter((__, place) => place !== left),
          0.95,
        ).gain,
    );
    const middle = without.reduce((sum, gain) => sum + gain, 0) / n;
    const squares = without.reduce((sum, gain) => sum + (gain - middle) ** 2, 0);
    const jackknife = Math.sqrt(((n - 1) / n) * squares);
    const { standardUncertainty } = classGain(learners, 0.95);
    expect(Math.abs(standardUncertainty / jackknife - 1)).toBeLessThan(0.05);
  });

  it('is between its ends, which are further apart for more certainty', () => {
    const [usual, sure] = [classGain(CLASS, 0.95), classGain(CLASS, 0.99)];
    expect(usual.low).toBeLessThan(usual.gain);
    expect(usual.gain - usual.low).toBeCloseTo(usual.high - usual.gain, 12);
    expect(sure.high).toBeGreaterThan(usual.high);
    expect((usual.high - usual.gain) / usual.standardUncertainty).toBeCloseTo(2.571, 3); // t for 5 degrees of freedom, GUM table G.2
  });

  it('never reaches beyond all that could be learned', () => {
    const { gain, low, high } = classGain(CLASS.slice(0, 2), 0.95);
    expect(high).toBe(1);
    expect(low).toBeLessThan(gain);
  });

  it('is known exactly where every learner ends with all right', () => {
    const all = CLASS.map(({ before }) => ({ before, after: 1 }));
    expect(classGain(all, 0.95)).toMatchObject({ gain: 1, standardUncertainty: 0 });
  });

  it.each([
    [[], 'number of learners'],
    [CLASS.slice(0, 1), 'number of learners'],
    [[...CLASS, { before: 2, after: 1 }], 'before must be at most 1'],
    [
      [
        { before: 1, after: 1 },
        { before: 1, after: 0.5 },
      ],
      'before must be below 1',
    ],
  ])('refuses %o', (learners, reason) => expect(() => classGain(learners, 0.95)).toThrow(reason));
});
