/** Springs in a row: by hand, a spring that lies flat, the law that the force gives the travel back, refusals. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { forceAtTravel } from '../../../src/core/loop.ts';
import { evenly } from '../../evenly.ts';

const straight = (...stiffnesses: number[]) => ({
  travelUnder: (force: number) => stiffnesses.reduce((sum, each) => sum + force / each, 0),
  stiffness: stiffnesses[0] as number,
});

describe('forceAtTravel', () => {
  it('is by hand 1/(1/3 + 1/6) = 2 kN/m times the travel', () =>
    expect(forceAtTravel(straight(3000, 6000), 0.005)).toBeCloseTo(10, 10));

  it('is that of the rest alone once one part lies flat', () => {
    const parts = {
      travelUnder: (force: number) => force / 1000 + Math.min(force, 50) / 500,
      stiffness: 1000,
    };
    expect(forceAtTravel(parts, 0.15)).toBeCloseTo(50, 9);
    expect(forceAtTravel(parts, 0.3)).toBeCloseTo(200, 9);
  });

  it('is nothing without travel', () => {
    expect(forceAtTravel(straight(1000), 0)).toBe(0);
    expect(forceAtTravel(straight(1000), -0.001)).toBe(0);
  });

  it('gives the travel back', () =>
    fc.assert(
      fc.property(evenly(1e5, 1e8), evenly(1e5, 1e8), evenly(1e-6, 0.05), (a, b, travel) => {
        const parts = straight(a, b);
        expect(parts.travelUnder(forceAtTravel(parts, travel)) / travel).toBeCloseTo(1, 12);
      }),
    ));

  it('wants a stiffness above 0', () =>
    expect(() => forceAtTravel({ travelUnder: () => 0, stiffness: 0 }, 0.1)).toThrow(
      'stiffness must be above 0 N/m',
    ));
});
