import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  dialTravel,
  misalignmentAllowance,
  misalignmentFactor,
} from '../../../src/core/elasticity/dial-reading.ts';
import { evenly } from '../../evenly.ts';

const dial = {
  first: 0.2e-3,
  shown: 0.87e-3,
  wholeTurns: 1,
  travelPerTurn: 1e-3,
  runsBackwards: true,
};
const degree = Math.PI / 180;

describe('dialTravel', () => {
  it('is 0.33 mm for a hand that ran back from 0.20 through 0 to 0.87, by hand', () =>
    expect(dialTravel(dial)).toBeCloseTo(0.33e-3, 15));

  it('is 1.67 mm for one that ran on', () =>
    expect(dialTravel({ ...dial, runsBackwards: false })).toBeCloseTo(1.67e-3, 15));

  it('is nil at the first reading and grows by one turn for each turn', () =>
    fc.assert(
      fc.property(fc.integer({ min: -5, max: 5 }), fc.boolean(), (wholeTurns, runsBackwards) => {
        const travel = dialTravel({ ...dial, shown: 0.2e-3, wholeTurns, runsBackwards });
        expect(travel).toBeCloseTo(wholeTurns * 1e-3, 15);
      }),
    ));

  it.each([
    ['first', 'm'],
    ['shown', 'm'],
    ['wholeTurns', 'turns'],
  ])('refuses %s that is no number of %s', (name, unit) =>
    expect(() => dialTravel({ ...dial, [name]: Number.NaN })).toThrow(
      `${name} must be a finite number of ${unit} (was NaN)`,
    ),
  );

  it('refuses a dial without travel', () =>
    expect(() => dialTravel({ ...dial, travelPerTurn: 0 })).toThrow(
      'travelPerTurn must be above 0 m',
    ));
});

describe('misalignmentFactor', () => {
  // Strain along a line at θ to the pull, from its two principal strains ε and −νε.
  it('is cos²θ − ν·sin²θ, by hand: 3° loses 0.36 %, 6° loses 1.4 %', () => {
    const hand = (angle: number) => Math.cos(angle) ** 2 - 0.3 * Math.sin(angle) ** 2;
    expect(misalignmentFactor(3 * degree, 0.3)).toBeCloseTo(hand(3 * degree), 15);
    expect(1 - misalignmentFactor(3 * degree, 0.3)).toBeCloseTo(0.0036, 4);
    expect(1 - misalignmentFactor(6 * degree, 0.3)).toBeCloseTo(0.014, 3);
  });

  it('is 1 along the band and −ν across it', () => {
    expect(misalignmentFactor(0, 0.3)).toBe(1);
    expect(misalignmentFactor(Math.PI / 2, 0.3)).toBeCloseTo(-0.3, 15);
  });

  it('does not ask which way the bar leans', () =>
    fc.assert(
      fc.property(evenly(0, 1.5), (angle) => {
        expect(misalignmentFactor(-angle, 0.3)).toBe(misalignmentFactor(angle, 0.3));
      }),
    ));

  it('refuses more than a right angle, and a Poisson ratio beyond a half', () => {
    const most = Math.PI / 2;
    expect(() => misalignmentFactor(2, 0.3)).toThrow(
      `angle must be between -${most} and ${most} rad (was 2)`,
    );
    expect(() => misalignmentFactor(-2, 0.3)).toThrow(/angle must be between .* rad \(was -2\)/);
    expect(() => misalignmentFactor(0, 0.6)).toThrow('poissonsRatio must be between 0 and 0.5');
  });
});

describe('misalignmentAllowance', () => {
  it('spans from no loss to the loss at the largest angle', () => {
    const { factor, halfWidth } = misalignmentAllowance(3 * degree, 0.3);
    expect(factor + halfWidth).toBeCloseTo(1, 15);
    expect(factor - halfWidth).toBeCloseTo(misalignmentFactor(3 * degree, 0.3), 15);
  });
});
