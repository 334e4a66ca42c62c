/** The weighted mean: by hand, its limits, the law that it moves and scales with its values, refusals. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { weightedMean } from '../../../src/core/agreement.ts';
import { evenly } from '../../evenly.ts';

const two = [
  { value: 10, standard: 1 },
  { value: 13, standard: 2 },
];

describe('weightedMean', () => {
  // Weights 1 and 1/4: (10 + 3.25)/1.25 = 10.6, u = 1/√1.25, and (0.6² + 1.2²)/1 = 1.8.
  it('is by hand 10.6 for 10 ± 1 and 13 ± 2', () => {
    const { value, standardUncertainty, birgeRatio } = weightedMean(two);
    expect(value).toBeCloseTo(10.6, 12);
    expect(standardUncertainty).toBeCloseTo(0.894427190999916, 12);
    expect(birgeRatio).toBeCloseTo(1.341640786499874, 12);
  });

  it('is the plain mean where all are equally uncertain, surer by the root of their number', () => {
    const { value, standardUncertainty } = weightedMean(
      [1, 2, 6].map((value) => ({ value, standard: 3 })),
    );
    expect(value).toBeCloseTo(3, 12);
    expect(standardUncertainty).toBeCloseTo(Math.sqrt(3), 12);
  });

  it('goes to the surer one as the other knows nothing', () =>
    expect(
      weightedMean([
        { value: 5, standard: 1 },
        { value: 99, standard: 1e9 },
      ]).value,
    ).toBeCloseTo(5, 9));

  it('moves and scales with its values', () =>
    fc.assert(
      fc.property(evenly(-50, 50), evenly(0.1, 10), (shift, factor) => {
        const moved = two.map(({ value, standard }) => ({
          value: factor * value + shift,
          standard: factor * standard,
        }));
        const [was, is] = [weightedMean(two), weightedMean(moved)];
        expect(is.value).toBeCloseTo(factor * was.value + shift, 9);
        expect(is.standardUncertainty).toBeCloseTo(factor * was.standardUncertainty, 9);
        expect(is.birgeRatio).toBeCloseTo(was.birgeRatio, 9);
      }),
    ));

  it.each([
    ['number of results must be at least 2', [{ value: 1, standard: 1 }]],
    ['result 2 must be', [...two.slice(0, 1), { value: Number.NaN, standard: 1 }]],
    ['uncertainty 1 must be above 0', [{ value: 1, standard: 0 }, ...two]],
  ])('says that %s', (says, results) => expect(() => weightedMean(results)).toThrow(says));
});
