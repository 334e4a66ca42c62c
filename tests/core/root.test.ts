import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rootBetween } from '../../src/core/root.ts';
import { evenly } from '../evenly.ts';

describe('rootBetween', () => {
  it('finds √2 and the fixed point of the cosine', () => {
    expect(rootBetween((x) => x * x - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 15);
    expect(rootBetween((x) => Math.cos(x) - x, 0, 1)).toBeCloseTo(0.7390851332151607, 15);
  });
  it('finds a root that lies at an end', () => {
    expect(rootBetween((x) => x - 1, 1, 3)).toBe(1);
    expect(rootBetween((x) => x - 3, 1, 3)).toBe(3);
    expect(rootBetween((x) => 1 - x, 1, 3)).toBe(1);
    expect(rootBetween((x) => 3 - x, 1, 3)).toBe(3);
  });
  it('copes with a curve that is flat at its root, and with a jump', () => {
    expect(rootBetween((x) => (x - 0.3) ** 9, 0, 1)).toBeCloseTo(0.3, 2);
    expect(rootBetween((x) => (x < 0.3 ? -1 : 2), 0, 1)).toBeCloseTo(0.3, 15);
  });
  it.each([
    [-1, 2, -1],
    [-2, 1, 1],
  ])('gives, of a jump from %s to %s, the side nearer to 0: %s', (below, above, nearer) => {
    const jump = (x: number) => (x < 0.3 ? below : above);
    expect(jump(rootBetween(jump, 0, 1))).toBe(nearer);
  });
  it('undoes any rising cubic', () =>
    fc.assert(
      fc.property(evenly(-50, 50), evenly(0, 3), (root, bend) => {
        const f = (x: number) => x - root + bend * (x - root) ** 3;
        expect(rootBetween(f, -60, 70)).toBeCloseTo(root, 12);
      }),
    ));
  it('ends at a jump at 0, where no digit is the last', () =>
    expect(Math.abs(rootBetween((x) => (x < 0 ? -1 : 2), -1, 2))).toBeLessThan(1e-300));
  it('refuses a bracket without a change of sign, and ends that are not finite', () => {
    expect(() => rootBetween((x) => x * x + 1, -1, 1)).toThrow(
      'f must be of two signs over -1 to 1',
    );
    expect(() => rootBetween((x) => x, Number.NaN, 1)).toThrow(/low must be a finite number/);
    expect(() => rootBetween((x) => x, 0, Infinity)).toThrow(/high must be a finite number/);
  });
});

describe('the steps of rootBetween', () => {
  const callsFor = (f: (x: number) => number, low: number, high: number) => {
    let calls = 0;
    rootBetween(
      (x) => {
        calls += 1;
        return f(x);
      },
      low,
      high,
    );
    return calls;
  };
  it.each([
    ['exp(x) = 5', (x: number) => Math.exp(x) - 5, -10, 10],
    ['x³ = 2x + 5', (x: number) => x ** 3 - 2 * x - 5, 2, 3],
    ['cos(x) = x', (x: number) => Math.cos(x) - x, 0, 1],
    ['x⁹ = 0.1', (x: number) => x ** 9 - 0.1, 0, 1],
  ] as const)('for %s are a quarter of the 53 halvings or fewer', (...[, f, low, high]) =>
    expect(callsFor(f, low, high)).toBeLessThanOrEqual(53 / 4),
  );
  it.each([
    ['flat', (x: number) => (x - 0.3) ** 3],
    ['flat and falling', (x: number) => -((x - 0.3) ** 9)],
    ['upright', (x: number) => Math.cbrt(x - 0.3)],
    ['broken', (x: number) => (x < 0.3 ? -1 : 2)],
  ])('are hardly more than those of halving where the curve is %s at its root', (_, f) =>
    expect(callsFor(f, 0, 1)).toBeLessThan(60),
  );
  it('end where a step lands on the root, here the first', () =>
    expect(callsFor((x) => x, -1, 1)).toBe(3));
});
