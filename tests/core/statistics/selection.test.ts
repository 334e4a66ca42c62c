import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { valueAtRank } from '../../../src/core/statistics/selection.ts';

const list = fc.array(
  fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.integer({ min: 0, max: 3 })),
  {
    minLength: 1,
    maxLength: 200,
  },
);

describe('valueAtRank', () => {
  it('is the value that sorting would put there', () =>
    fc.assert(
      fc.property(list, fc.nat(), (values, n) => {
        const rank = n % values.length;
        const sorted = Float64Array.from(values).sort();
        expect(valueAtRank(Float64Array.from(values), rank) === sorted[rank]).toBe(true);
      }),
    ));
  it('leaves nothing larger before the rank, so a higher rank is found behind it', () => {
    const values = Float64Array.from({ length: 1000 }, (_, i) => (i * 7919) % 1000);
    expect(valueAtRank(values, 25)).toBe(25);
    expect(Math.max(...values.slice(0, 25))).toBe(24);
    expect(valueAtRank(values, 975, 25)).toBe(975);
  });
  it('looks only where it is told', () => {
    const values = Float64Array.of(9, 3, 2, 1, 0);
    expect(valueAtRank(values, 1, 1, 4)).toBe(1);
    expect([values[0], values[4]]).toEqual([9, 0]);
  });
  // A pivot at an end of a sorted list would read it n²/2 times over: half a million for 1000.
  it.each([
    ['rising', (i: number) => i],
    ['falling', (i: number) => 999 - i],
  ])('reads a %s list few times, whichever rank is asked', (_, valueAt) => {
    for (const rank of [0, 25, 500, 975, 999]) {
      let reads = 0;
      const counted = new Proxy(
        Float64Array.from({ length: 1000 }, (_, i) => valueAt(i)),
        {
          get: (target, key) => {
            reads += 1;
            return Reflect.get(target, key);
          },
        },
      );
      expect(valueAtRank(counted, rank)).toBe(rank);
      expect(reads).toBeLessThan(10_000);
    }
  });
});
