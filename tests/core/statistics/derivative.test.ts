import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { derivative } from '../../../src/core/statistics/derivative.ts';
import { evenly } from '../../evenly.ts';

describe('derivative', () => {
  it.each([
    ['exp at 1', Math.exp, 1, 0.5, Math.E],
    ['sine at 0', Math.sin, 0, 0.5, 1],
    ['one over x at 0.1', (x: number) => 1 / x, 0.1, 0.02, -100],
    ['square root at 4', Math.sqrt, 4, 1, 0.25],
  ])('of %s is the closed form to 1e-10', (_, f, x, step, expected) =>
    expect(derivative(f, x, step) / expected).toBeCloseTo(1, 10),
  );
  it('of a straight line is its slope, whatever the step', () =>
    fc.assert(
      fc.property(evenly(-1e3, 1e3), evenly(0.01, 1e3), (slope, step) => {
        expect(derivative((x) => 3 + slope * x, 2, step)).toBeCloseTo(slope, 8);
      }),
    ));
  it('of x⁵ is exact, by hand: 5 + 10h² + h⁴ over a step of h, without both', () =>
    expect(derivative((x) => x ** 5, 1, 1)).toBeCloseTo(5, 12));
  it('of a constant is 0', () => expect(derivative(() => 7, 2, 1)).toBe(0));
  it('is not a number where the function is none', () =>
    expect(derivative(() => Number.NaN, 2, 1)).toBeNaN());
});
