import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { effectiveLength, pressForce, stretchStiffness } from '../../../src/core/span/press.ts';
import { evenly } from '../../evenly.ts';

const string = { span: 1.5, bendingStiffness: 0, tension: 3000, ends: 'wheels' } as const;
const stretching = { ...string, axialStiffness: 6e6, effectiveLength: 4 };
const mill = { loopLength: 4, axialStiffness: 6e6, frameStiffness: 8e6 };

describe('effectiveLength', () => {
  it('is 4 m and 3 m more for a frame of 8 MN/m, by hand: 4 × 6/8', () =>
    expect(effectiveLength(mill)).toBe(7));

  it('is the loop itself in a rigid frame', () =>
    expect(effectiveLength({ ...mill, frameStiffness: Number.POSITIVE_INFINITY })).toBe(4));

  it.each(['loopLength', 'axialStiffness', 'frameStiffness'])('refuses %s of 0', (name) =>
    expect(() => effectiveLength({ ...mill, [name]: 0 })).toThrow(`${name} must be above 0`),
  );
});

describe('pressForce', () => {
  it('is 4T·d/s on a string, and 8EA·d³/(s²·L) more for the stretch, by hand', () => {
    expect(pressForce(string, 0.006)).toBeCloseTo(48, 10);
    expect(pressForce(stretching, 0.006) - 48).toBeCloseTo((8 * 6e6 * 0.006 ** 3) / 9, 10);
  });

  // Two straight halves: each grows by d²/s over a half-span, the pull by EA·2d²/(s·L).
  it('agrees with the two straight halves of a pressed string', () => {
    const [span, deflection] = [1.5, 0.006];
    const longer = 2 * Math.hypot(span / 2, deflection) - span;
    const pull = 3000 + (6e6 * longer) / 4;
    const sideways = (2 * pull * deflection) / Math.hypot(span / 2, deflection);
    expect(pressForce(stretching, deflection) / sideways).toBeCloseTo(1, 4);
  });

  it('rises with the deflection', () => {
    const deflections = evenly(0, 0.05);
    fc.assert(
      fc.property(deflections, (deflection) => {
        const deeper = pressForce(stretching, deflection + 1e-6);
        expect(deeper).toBeGreaterThan(pressForce(stretching, deflection));
      }),
    );
  });

  it('takes the stretch with both of its numbers or not at all', () => {
    expect(stretchStiffness(string)).toBe(0);
    const [half, other] = [{ axialStiffness: 6e6 }, { effectiveLength: 4 }];
    expect(() => pressForce({ ...string, ...half }, 0.006)).toThrow(
      'effectiveLength must be above 0 m',
    );
    expect(() => pressForce({ ...string, ...other }, 0.006)).toThrow(
      'axialStiffness must be above 0 N',
    );
  });

  it('refuses a negative deflection', () =>
    expect(() => pressForce(string, -0.001)).toThrow('deflection must be at least 0 m'));
});
