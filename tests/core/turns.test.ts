import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  frameCompliance,
  frameStiffness,
  isFrameResolved,
  seriesStiffness,
  totalStiffness,
  turnsForForce,
  wheelTravelPerTurn,
} from '../../src/core/turns.ts';

const stiffness = fc.double({ min: 1e4, max: 1e8, noNaN: true });
const drive = fc.record({
  lead: fc.double({ min: 0.001, max: 0.012, noNaN: true }),
  advantage: fc.double({ min: 0.5, max: 4, noNaN: true }),
});

describe('seriesStiffness', () => {
  it('matches Hibbeler, Mechanics of Materials, Example 4.8: half a turn of a nut is 11.22 kip', () => {
    const bolt = (10_600 * Math.PI * 0.25 ** 2) / 3; // kip/in; the units cancel
    const tube = (6480 * Math.PI * (0.5 ** 2 - 0.25 ** 2)) / 3;
    const travel = 0.5 * wheelTravelPerTurn({ lead: 1 / 20 });
    expect(travel * seriesStiffness([bolt, tube])).toBeCloseTo(11.22, 2);
  });
  it('of one spring is its own', () => expect(seriesStiffness([8e6])).toBeCloseTo(8e6, 6));
  it('is below the softest', () =>
    fc.assert(
      fc.property(fc.array(stiffness, { minLength: 2, maxLength: 5 }), (springs) => {
        expect(seriesStiffness(springs)).toBeLessThan(Math.min(...springs));
      }),
    ));
  it('refuses no spring, and a spring without stiffness', () => {
    expect(() => seriesStiffness([])).toThrow('stiffnesses must be at least one (was none)');
    expect(() => seriesStiffness([1e6, 0])).toThrow(/stiffness must be above 0 N\/m/);
  });
});

describe('turnsForForce', () => {
  const mill = { lead: 0.004, wheelForce: 7200, stiffness: 3_648_047.454275828 };
  it('is half a turn for a whole job on a stiff mill: 0.4934, derived here', () =>
    expect(turnsForForce(mill)).toBeCloseTo(0.49341463414634146, 12));
  it('adds the turns that take up slack, and doubles through a 2:1 lever', () => {
    expect(turnsForForce({ ...mill, slackTurns: 1.5 })).toBeCloseTo(1.99341463414634, 12);
    expect(turnsForForce({ ...mill, advantage: 2 })).toBeCloseTo(2 * turnsForForce(mill), 12);
  });
  it('is undone by totalStiffness', () =>
    fc.assert(
      fc.property(drive, stiffness, (any, spring) => {
        const turns = turnsForForce({ ...any, wheelForce: 7200, stiffness: spring });
        const found = totalStiffness({ ...any, turns, wheelForce: 7200 });
        expect(found / spring).toBeCloseTo(1, 12);
      }),
    ));
  it.each([
    [{ lead: 0 }, /lead must be above 0 m/],
    [{ advantage: -1 }, /advantage must be above 0/],
    [{ wheelForce: -1 }, /wheelForce must be at least 0 N/],
    [{ stiffness: 0 }, /stiffness must be above 0 N\/m/],
    [{ slackTurns: -1 }, /slackTurns must be at least 0/],
  ])('refuses %o', (wrong, message) =>
    expect(() => turnsForForce({ ...mill, ...wrong })).toThrow(message),
  );
});

describe('frameStiffness', () => {
  const reading = { lead: 0.004, turns: 0.49341463414634146, wheelForce: 7200 };
  const band = { bandStiffness: 6_134_663.341645885 };
  it('is the 9 MN/m that made the turns: derived here', () =>
    expect(frameStiffness(reading, band)).toBeCloseTo(9e6, 2));
  it('finds the frame behind any band, spring and lever', () =>
    fc.assert(
      fc.property(drive, stiffness, stiffness, stiffness, (any, frame, bandStiff, spring) => {
        const total = seriesStiffness([frame, bandStiff, spring]);
        const turns = turnsForForce({ ...any, wheelForce: 5000, stiffness: total });
        const others = { bandStiffness: bandStiff, springStiffness: spring };
        const found = frameCompliance({ ...any, turns, wheelForce: 5000 }, others);
        expect(Math.abs(found - 1 / frame)).toBeLessThan(1e-12 / total);
      }),
    ));
  it('turns negative where the turns are fewer than the band alone needs', () => {
    expect(frameStiffness({ ...reading, turns: 0.25 }, band)).toBeLessThan(0);
    expect(frameCompliance({ ...reading, turns: 0.25 }, band)).toBeLessThan(0);
  });
  it.each([
    [{ turns: 0 }, /turns must be above 0/],
    [{ turns: Number.NaN }, /turns must be above 0/],
    [{ lead: 0 }, /lead must be above 0 m/],
    [{ wheelForce: 0 }, /wheelForce must be above 0 N/],
  ])('refuses %o', (wrong, message) =>
    expect(() => frameStiffness({ ...reading, ...wrong }, band)).toThrow(message),
  );
  it('refuses a band without stiffness', () =>
    expect(() => frameStiffness(reading, { bandStiffness: 0 })).toThrow(
      /stiffness must be above 0/,
    ));
});

describe('isFrameResolved', () => {
  it('asks for more than twice the standard uncertainty', () => {
    expect(isFrameResolved(2.1e-8, 1e-8)).toBe(true);
    expect(isFrameResolved(2e-8, 1e-8)).toBe(false);
    expect(isFrameResolved(-1e-7, 1e-8)).toBe(false);
  });
  it('refuses what is no number and an uncertainty below none', () => {
    expect(() => isFrameResolved(Number.NaN, 1e-8)).toThrow(/compliance must be a finite number/);
    expect(() => isFrameResolved(1e-7, -1)).toThrow(/standardUncertainty must be at least 0 m\/N/);
  });
});
