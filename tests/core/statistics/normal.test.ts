import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalDensity, normalUpperTail } from '../../../src/core/statistics/normal.ts';
import { evenly } from '../../evenly.ts';

describe('normalUpperTail', () => {
  it.each([
    [0, 0.5],
    [1, 0.15865525393145705],
    [1.959963984540054, 0.025],
    [3, 0.0013498980316300946],
    [6, 9.865876450376981e-10],
    [-1, 0.8413447460685429],
    [-4, 0.9999683287581669],
  ])('above %s is %s (tables of the normal distribution)', (z, expected) =>
    expect(normalUpperTail(z) / expected).toBeCloseTo(1, 12),
  );
  it('falls by the density', () =>
    fc.assert(
      fc.property(evenly(-5, 5), (z) => {
        const step = 1e-4;
        const fall = (normalUpperTail(z - step) - normalUpperTail(z + step)) / (2 * step);
        expect(fall).toBeCloseTo(normalDensity(z), 7);
      }),
    ));
  it('adds up to 1 with its mirror image', () =>
    fc.assert(
      fc.property(evenly(-8, 8), (z) => {
        expect(normalUpperTail(z) + normalUpperTail(-z)).toBeCloseTo(1, 14);
      }),
    ));
  it('refuses what is not finite', () => {
    expect(() => normalUpperTail(Number.NaN)).toThrow(/z must be a finite number/);
    expect(() => normalDensity(Number.POSITIVE_INFINITY)).toThrow(/z must be a finite number/);
  });
});
