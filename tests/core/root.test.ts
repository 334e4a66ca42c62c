import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rootBetween } from '../../src/core/root.ts';
import { evenly } from './fixtures/evenly.ts';

describe('rootBetween', () => {
  it('finds √2 and the fixed point of the cosine', () => {
    expect(rootBetween((x) => x * x - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 15);
    expect(rootBetween((x) => Math.cos(x) - x, 0, 1)).toBeCloseTo(0.7390851332151607, 15);
  });
  it('finds a root that lies at an end', () => {
    expect(rootBetween((x) => x - 1, 1, 3)).toBe(1);
    expect(rootBetween((x) => x - 3, 1, 3)).toBe(3);
  });
  it('copes with a curve that is flat at its root, and with a jump', () => {
    expect(rootBetween((x) => (x - 0.3) ** 9, 0, 1)).toBeCloseTo(0.3, 2);
    expect(rootBetween((x) => (x < 0.3 ? -1 : 2), 0, 1)).toBeCloseTo(0.3, 15);
  });
  it('undoes any rising cubic', () =>
    fc.assert(
      fc.property(evenly(-50, 50), evenly(0, 3), (root, bend) => {
        const f = (x: number) => x - root + bend * (x - root) ** 3;
        expect(rootBetween(f, -60, 70)).toBeCloseTo(root, 12);
      }),
    ));
  it('takes few steps', () => {
    let calls = 0;
    rootBetween(
      (x) => {
        calls += 1;
        return Math.exp(x) - 5;
      },
      -10,
      10,
    );
    expect(calls).toBeLessThan(20);
  });
  it('refuses a bracket without a change of sign, and ends that are not finite', () => {
    expect(() => rootBetween((x) => x * x + 1, -1, 1)).toThrow(
      'f must be of two signs over -1 to 1',
    );
    expect(() => rootBetween((x) => x, Number.NaN, 1)).toThrow(/low must be a finite number/);
    expect(() => rootBetween((x) => x, 0, Infinity)).toThrow(/high must be a finite number/);
  });
});
