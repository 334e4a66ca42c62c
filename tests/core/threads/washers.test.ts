import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plainWasher } from '../../../src/core/threads/washers.ts';
import { threadDesignations, washerOfThread } from '../../../src/core/threads.ts';

const mm = (washer: { innerDiameter: number; outerDiameter: number } | undefined) =>
  washer &&
  [washer.innerDiameter, washer.outerDiameter].map((size) => Number((size * 1e3).toFixed(4)));
const inches = (washer: { innerDiameter: number; outerDiameter: number } | undefined) =>
  washer &&
  [washer.innerDiameter, washer.outerDiameter].map((size) => Number((size / 0.0254).toFixed(6)));

describe('the washer of a thread', () => {
  it.each([
    ['M6', 6.4, 12],
    ['M10', 10.5, 20],
    ['M16', 17, 30],
    ['M20x1.5', 21, 37],
    ['M24', 25, 44],
    ['M30', 31, 56],
    ['M36', 37, 66],
  ])('of %s is %d by %d mm, as ISO 7089 prints it', (name, inner, outer) =>
    expect(mm(washerOfThread(name))).toEqual([inner, outer]),
  );

  it.each([
    ['1/4-20 UNC', 0.281, 0.625],
    ['3/8-16 UNC', 0.406, 0.812],
    ['1/2-13 UNC', 0.531, 1.062],
    ['5/8-11 UNC', 0.656, 1.312],
    ['3/4-6 Acme', 0.812, 1.469],
    ['1-5 Acme', 1.062, 2],
  ])('of %s is %d by %d in, type A, narrow', (name, inner, outer) =>
    expect(inches(washerOfThread(name))).toEqual([inner, outer]),
  );

  it('of a trapezoidal screw is that of its outside diameter, or of the next size up', () => {
    expect(mm(washerOfThread('Tr20x4'))).toEqual([21, 37]);
    expect(mm(washerOfThread('Tr28x5'))).toEqual([31, 56]);
  });

  it('is there for every listed thread, goes over it, and is wider than its hole', () => {
    expect(threadDesignations.length).toBeGreaterThan(100);
    for (const name of threadDesignations) {
      const washer = washerOfThread(name);
      expect(washer?.outerDiameter).toBeGreaterThan(1.4 * (washer?.innerDiameter ?? Infinity));
    }
    expect(washerOfThread('M21')).toBeUndefined();
  });
});

describe('plainWasher', () => {
  it('takes a size that was typed in the other unit: 0.7874 in is 20 mm', () =>
    expect(mm(plainWasher('metric', 0.7874 * 0.0254))).toEqual([21, 37]));

  it('grows with the thread, in proportion beyond the list', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('metric', 'inch'),
        fc.double({ min: 0.004, max: 0.2, noNaN: true }),
        (system, diameter) => {
          const [small, large] = [diameter, 1.05 * diameter].map((d) => plainWasher(system, d));
          expect(small?.innerDiameter).toBeGreaterThan(diameter);
          expect(large?.outerDiameter).toBeGreaterThanOrEqual(small?.outerDiameter ?? Infinity);
        },
      ),
    );
    expect(plainWasher('metric', 0.128).outerDiameter).toBeCloseTo(0.23, 12);
  });

  it('refuses a thread of no size', () => expect(() => plainWasher('inch', 0)).toThrow(RangeError));
});
