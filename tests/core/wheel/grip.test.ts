import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tensionRatio } from '../../../src/core/wheel.ts';
import { evenly } from '../../evenly.ts';

describe('tensionRatio', () => {
  // Beer and Johnston, Vector Mechanics for Engineers, sample problem 8.7: a hawser held by 150 N
  // against 7500 N on two turns has μ = 0.311; three turns hold 53 kN.
  it('holds the printed hawser', () => {
    const friction = Math.log(7500 / 150) / (4 * Math.PI);
    expect(friction).toBeCloseTo(0.311, 3);
    expect(150 * tensionRatio({ friction, wrap: 6 * Math.PI })).toBeCloseTo(53033.008589, 3);
  });

  // Shigley, ch. 17, flat metal belt: exp(fφ) = 3.00 for f = 0.35 over half a turn.
  it('gives the printed 3.00 for 0.35 over half a turn', () =>
    expect(tensionRatio({ friction: 0.35, wrap: Math.PI })).toBeCloseTo(3, 2));

  it('is 1 without friction or wrap', () => {
    expect(tensionRatio({ friction: 0, wrap: 3 })).toBe(1);
    expect(tensionRatio({ friction: 0.3, wrap: 0 })).toBe(1);
  });

  it('multiplies when wraps add', () => {
    const wraps = evenly(0, 6);
    fc.assert(
      fc.property(wraps, wraps, (one, two) => {
        const ratio = (wrap: number) => tensionRatio({ friction: 0.3, wrap });
        expect((ratio(one) * ratio(two)) / ratio(one + two)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('refuses negative friction and wrap', () => {
    expect(() => tensionRatio({ friction: -0.1, wrap: 1 })).toThrow('friction must be at least 0');
    expect(() => tensionRatio({ friction: 0.1, wrap: -1 })).toThrow('wrap must be at least 0 rad');
  });
});
