import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  flankFactor,
  flankHalfAngle,
  leadAngle,
  leadSlope,
  loweringFactor,
  raisingFactor,
} from '../../../src/core/screw/shape.ts';
import { evenly } from '../../evenly.ts';

const degree = Math.PI / 180;
const acme = { meanDiameter: 0.02286, lead: 0.00508, halfAngle: 14.5 * degree };
const slope = fc.double({ min: 0.01, max: 0.5, noNaN: true });
const friction = evenly(0, 0.5);

describe('leadAngle', () => {
  it('matches Mott, Machine Elements, Example 17-1: Acme 1 1/2-4 at 1.3429 in is 3.39°', () =>
    expect(leadAngle({ meanDiameter: 1.3429, lead: 0.25 }) / degree).toBeCloseTo(3.39, 2));
  it.each([
    [{ meanDiameter: 0 }, /meanDiameter must be above 0 m/],
    [{ lead: Number.NaN }, /lead must be above 0 m/],
  ])('refuses %o', (wrong, message) =>
    expect(() => leadAngle({ ...acme, ...wrong })).toThrow(message),
  );
});

describe('leadSlope and flankFactor', () => {
  it('are the tangent of the lead angle and one over the cosine of the flank angle square to the thread', () =>
    fc.assert(
      fc.property(slope, evenly(0, 1.5), (tanLead, halfAngle) => {
        const shape = { meanDiameter: 0.02, lead: Math.PI * 0.02 * tanLead, halfAngle };
        expect(leadSlope(shape)).toBeCloseTo(Math.tan(leadAngle(shape)), 12);
        const square = Math.atan(Math.tan(halfAngle) * Math.cos(leadAngle(shape)));
        expect(flankFactor(shape) * Math.cos(square)).toBeCloseTo(1, 12);
      }),
    ));
  it('is 1 for a square thread', () => expect(flankFactor({ ...acme, halfAngle: 0 })).toBe(1));
  it('are 0.0707 and 1/cos 14.4654° for Acme 1-5, whose flank is at 14.5°: derived here', () => {
    expect(leadSlope(acme)).toBeCloseTo(0.0707, 4);
    expect(Math.acos(1 / flankFactor(acme)) / degree).toBeCloseTo(14.4654, 4);
  });
});

describe('flankHalfAngle', () => {
  it.each([-0.1, Number.NaN])('refuses %s', (halfAngle) =>
    expect(() => flankHalfAngle({ halfAngle })).toThrow(/halfAngle must be at least 0 rad/),
  );
  it('refuses a flat thread', () =>
    expect(() => flankHalfAngle({ halfAngle: Math.PI / 2 })).toThrow(
      /halfAngle must be below 1.57/,
    ));
});

describe('raisingFactor and loweringFactor', () => {
  it('are tan(λ + φ) and tan(φ − λ), the block on the slope', () =>
    fc.assert(
      fc.property(slope, friction, (tanLead, mu) => {
        const [lead, rub] = [Math.atan(tanLead), Math.atan(mu)];
        expect(raisingFactor(tanLead, mu)).toBeCloseTo(Math.tan(lead + rub), 10);
        expect(loweringFactor(tanLead, mu)).toBeCloseTo(Math.tan(rub - lead), 10);
      }),
    ));
  it('mirror each other without friction', () => {
    expect(raisingFactor(0.1, 0)).toBe(0.1);
    expect(loweringFactor(0.1, 0)).toBe(-0.1);
  });
  it('refuses to raise with a friction that jams the screw', () =>
    expect(() => raisingFactor(0.5, 2)).toThrow('effectiveFriction must be below 2 (was 2)'));
});
