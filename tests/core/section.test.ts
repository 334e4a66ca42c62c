import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  sectionArea,
  strandForce,
  strandForceAtWheel,
  strandShare,
  strandStress,
  wheelForce,
} from '../../src/core/section.ts';
import { evenly } from '../evenly.ts';

const area = fc.double({ min: 1e-6, max: 1e-3, noNaN: true });
const pull = evenly(0, 1e5);
const lean = evenly(0, 0.5);

describe('sectionArea', () => {
  it('is width times thickness: 29 mm by 1 mm is 29 mm²', () =>
    expect(sectionArea({ width: 0.029, thickness: 0.001 })).toBeCloseTo(29e-6, 12));
  it.each([
    [{ width: 0, thickness: 0.001 }, /width must be above 0 m/],
    [{ width: 0.03, thickness: Number.NaN }, /thickness must be above 0 m/],
  ])('refuses %o', (wrong, message) => expect(() => sectionArea(wrong)).toThrow(message));
});

describe('strandForce and strandStress', () => {
  it('matches OpenStax, University Physics 1, 12.3: 550 kg on 0.3 cm² is 180 MPa', () =>
    expect(strandStress(550 * 9.8, 3e-5)).toBeCloseTo(179.667e6, -4));
  it('is stress times area: 110 MPa on 29 mm² is 3190 N, definition', () =>
    expect(strandForce(110e6, 29e-6)).toBeCloseTo(3190, 9));
  it('keeps the sign', () => expect(strandForce(-1e6, 1e-5)).toBeCloseTo(-10, 12));
  it('undo each other', () =>
    fc.assert(
      fc.property(pull, area, (force, section) => {
        expect(strandForce(strandStress(force, section), section)).toBeCloseTo(force, 6);
      }),
    ));
  it('refuse what is no number, and no area', () => {
    expect(() => strandForce(Number.NaN, 1e-5)).toThrow(/stress must be a finite number of Pa/);
    expect(() => strandForce(1e6, 0)).toThrow(/area must be above 0 m²/);
    expect(() => strandStress(Number.NaN, 1e-5)).toThrow(
      /strandForce must be a finite number of N/,
    );
    expect(() => strandStress(1, -1)).toThrow(/area must be above 0 m²/);
  });
});

describe('wheelForce', () => {
  it('is twice the strand force on equal wheels', () => expect(wheelForce(3190)).toBe(6380));
  it('is a little less where the strands lean: derived here, 4.096° takes 0.26 %', () =>
    expect(wheelForce(4000, 0.07148944988552053)).toBeCloseTo(7979.565739296538, 8));
  it('is undone by strandForceAtWheel', () =>
    fc.assert(
      fc.property(pull, lean, (force, angle) => {
        expect(strandForceAtWheel(wheelForce(force, angle), angle)).toBeCloseTo(force, 8);
      }),
    ));
  it('takes no lean for granted both ways', () => expect(strandForceAtWheel(6380)).toBe(3190));
  it('refuses what is no number', () => {
    expect(() => wheelForce(Number.NaN)).toThrow(/strandForce must be a finite number of N/);
    expect(() => strandForceAtWheel(Number.NaN)).toThrow(/wheelForce must be a finite number of N/);
  });
});

describe('strandShare', () => {
  it('is all of the pull for parallel strands', () => expect(strandShare(0)).toBe(1));
  it('refuses a lean below none and one square to the centres', () => {
    expect(() => strandShare(-0.1)).toThrow(/strandHalfAngle must be at least 0 rad/);
    expect(() => strandShare(Math.PI / 2)).toThrow(/strandHalfAngle must be below 1.57\d+ rad/);
  });
});
