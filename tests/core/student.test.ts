import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tCdf, tQuantile } from '../../src/core/student.ts';
import { evenly } from '../evenly.ts';

const degrees = fc.oneof(fc.double({ min: 0.5, max: 200, noNaN: true }), fc.constant(Infinity));

describe('tQuantile', () => {
  it.each([
    [0.975, 1, 12.71],
    [0.975, 5, 2.57],
    [0.995, 16, 2.92],
    [0.975, 30, 2.04],
    [0.95, 9, 1.83],
  ])('of %s with %s degrees of freedom rounds to %s (GUM, table G.2)', (p, nu, printed) =>
    expect(tQuantile(p, nu)).toBeCloseTo(printed, 2),
  );
  it('has the closed forms of 1 and 2 degrees of freedom', () => {
    expect(tQuantile(0.975, 1)).toBeCloseTo(Math.tan(0.475 * Math.PI), 10);
    expect(tQuantile(0.975, 2)).toBeCloseTo(0.95 / Math.sqrt(2 * 0.975 * 0.025), 12);
  });
  it('becomes normal for very many degrees of freedom', () => {
    expect(tQuantile(0.975, Infinity)).toBeCloseTo(1.959963984540054, 13);
    const z = 1.959963984540054;
    expect(tQuantile(0.975, 1e6)).toBeCloseTo(z + (z ** 3 + z) / 4e6, 9);
  });
  it('is 0 in the middle and mirrored about it', () => {
    expect(tQuantile(0.5, 4)).toBe(0);
    expect(tQuantile(0.1, 4)).toBeCloseTo(-tQuantile(0.9, 4), 13);
  });
  it('undoes tCdf', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), degrees, (p, nu) => {
        expect(tCdf(tQuantile(p, nu), nu)).toBeCloseTo(p, 12);
      }),
    ));
  it('refuses probabilities and degrees of freedom out of range', () => {
    expect(() => tQuantile(0, 5)).toThrow('probability must be above 0 (was 0)');
    expect(() => tQuantile(1, 5)).toThrow('probability must be below 1 (was 1)');
    expect(() => tQuantile(0.9, 0)).toThrow('degreesOfFreedom must be above 0 (was 0)');
    expect(() => tQuantile(0.9, Number.NaN)).toThrow(/degreesOfFreedom must be above 0/);
  });
});

describe('tCdf', () => {
  it('has the closed form of 1 degree of freedom, ½ + arctan(t)/π', () =>
    fc.assert(
      fc.property(evenly(-1e3, 1e3), (t) => {
        expect(tCdf(t, 1)).toBeCloseTo(0.5 + Math.atan(t) / Math.PI, 13);
      }),
    ));
  it('is ½ at 0', () => expect(tCdf(0, 3)).toBe(0.5));
  it('refuses a t that is not finite, and degrees of freedom not above 0', () => {
    expect(() => tCdf(Number.NaN, 3)).toThrow(/t must be a finite number/);
    expect(() => tCdf(1, 0)).toThrow('degreesOfFreedom must be above 0 (was 0)');
  });
});
