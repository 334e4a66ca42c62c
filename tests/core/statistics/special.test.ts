import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { incompleteBeta, logGamma } from '../../../src/core/statistics/special.ts';
import { evenly } from '../../evenly.ts';

describe('logGamma', () => {
  it.each([
    [1, 0],
    [2, 0],
    [0.5, Math.log(Math.PI) / 2],
    [5, Math.log(24)],
    [21, 42.335616460753485], // ln 20!
    [1e6, 12815504.569147611], // from memory
  ])('of %s is %s (factorials and √π)', (x, expected) =>
    expect(logGamma(x)).toBeCloseTo(expected, Math.abs(expected) > 1e3 ? 6 : 13),
  );
  it('obeys Γ(x + 1) = x·Γ(x)', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 200, noNaN: true }), (x) => {
        expect(logGamma(x + 1) - logGamma(x)).toBeCloseTo(Math.log(x), 11);
      }),
    ));
  it.each([0, -1, Number.NaN])('refuses %s', (x) =>
    expect(() => logGamma(x)).toThrow(/x must be above 0/),
  );
});

describe('incompleteBeta', () => {
  it.each([
    [0.3, 1, 1, 0.3], // equal chances
    [0.3, 2, 1, 0.09], // x²
    [0.3, 1, 3, 1 - 0.7 ** 3],
    [0.5, 7, 7, 0.5], // symmetric
    [0.25, 0.5, 0.5, 1 / 3], // arcsine law
  ])('I_%s(%s, %s) = %s (closed forms)', (x, a, b, expected) =>
    expect(incompleteBeta(x, a, b)).toBeCloseTo(expected, 14),
  );
  // The chance of at least a heads in n = a + b − 1 throws, added up throw by throw.
  it('is a binomial sum for whole arguments, below and above where the series begins', () =>
    fc.assert(
      fc.property(
        evenly(0.01, 0.99),
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 40 }),
        (x, a, b) => {
          let chances = [1];
          for (let n = 1; n < a + b; n += 1) {
            chances = Array.from(
              { length: n + 1 },
              (_, k) => (1 - x) * (chances[k] ?? 0) + x * (chances[k - 1] ?? 0),
            );
          }
          const expected = chances.slice(a).reduce((sum, chance) => sum + chance, 0);
          expect(incompleteBeta(x, a, b)).toBeCloseTo(expected, 12);
        },
      ),
    ));
  it('keeps its digits far out: the arcsine law near 0, (2/π)·√x', () =>
    expect(incompleteBeta(1e-30, 0.5, 0.5) / ((2 / Math.PI) * 1e-15)).toBeCloseTo(1, 13));
  it.each([
    [1e8, 1e-8],
    [1e12, 1e-12],
  ])('keeps the digits of the complement: (1 − 1/a)ᵃ for a = %s', (a, complement) =>
    expect(incompleteBeta(1 - complement, a, 1, complement)).toBeCloseTo(
      Math.exp(a * Math.log1p(-complement)),
      13,
    ),
  );
  it('is 0 and 1 at the ends', () => {
    expect(incompleteBeta(0, 2, 3)).toBe(0);
    expect(incompleteBeta(1, 2, 3)).toBe(1);
  });
  it('keeps its digits for a large argument: I_x(a, 1) = xᵃ', () =>
    expect(incompleteBeta(1 - 1e-6, 1e6, 1) / (1 - 1e-6) ** 1e6).toBeCloseTo(1, 9));
  it('obeys I_x(a, b) = 1 − I_{1−x}(b, a)', () =>
    fc.assert(
      fc.property(evenly(0.001, 0.999), evenly(0.2, 60), evenly(0.2, 60), (x, a, b) => {
        expect(incompleteBeta(x, a, b)).toBeCloseTo(1 - incompleteBeta(1 - x, b, a), 11);
      }),
    ));
  it('refuses a share outside 0 to 1 and arguments not above 0', () => {
    expect(() => incompleteBeta(1.1, 1, 1)).toThrow('x must be between 0 and 1 (was 1.1)');
    expect(() => incompleteBeta(0.5, 0, 1)).toThrow('a must be above 0 (was 0)');
    expect(() => incompleteBeta(0.5, 1, -1)).toThrow('b must be above 0 (was -1)');
  });
});
