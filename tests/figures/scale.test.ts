import { ticks as d3Ticks } from 'd3';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linearScale, roundNumbers, ticks } from '../../src/figures/scale.ts';

describe('linearScale', () => {
  it('takes the ends to the ends and the middle to the middle', () =>
    expect([0, 5, 10].map(linearScale([0, 10], [300, 100]))).toEqual([300, 200, 100]));
});

describe('roundNumbers', () => {
  it('are those of d3, an independent implementation', () =>
    fc.assert(
      fc.property(
        fc.double({ min: -1e5, max: 1e5, noNaN: true }),
        fc.double({ min: 1e-4, max: 1e5, noNaN: true }),
        fc.integer({ min: 2, max: 12 }),
        (low, width, count) => {
          expect(roundNumbers(low, low + width, count).map((tick) => tick + 0)).toEqual(
            d3Ticks(low, low + width, count).map((tick) => tick + 0),
          );
        },
      ),
      { numRuns: 500 },
    ));
  it('count in clean fractions', () =>
    expect(roundNumbers(0, 0.7, 7)).toEqual([0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7]));
});

describe('ticks', () => {
  it('are round in the reader’s own unit and stand at its SI value', () => {
    const shown = ticks(0, 100e6, 'stress', 'us', 3);
    expect(shown.map(({ text }) => text)).toEqual(['0', '5000', '10\u202f000']);
    expect(shown[1]?.value).toBeCloseTo(5000 * 6894.757293168, 3);
  });
});
