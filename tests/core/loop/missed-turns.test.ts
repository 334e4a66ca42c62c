import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { missedTurns, turnsOff } from '../../../src/core/loop/missed-turns.ts';
import { evenly } from '../../evenly.ts';

const scale = { travelPerTurn: 0.2e-3, repeatability: 5e-6 };
// A fine dial, one turn every 0.2 mm, on an invented mill with oil; crooked at first.
const loads = [0.5, 1.6, 2.7, 3.8, 4.9, 6, 7, 8.1, 9.2, 10.3];
const extensions = [0, 0, 32, 70, 108, 146, 178, 214, 258, 294].map((micron) => micron * 1e-6);
const lacking = (turns: readonly number[]) =>
  extensions.map((extension, i) => extension - (turns[i] as number) * scale.travelPerTurn);

describe('turnsOff', () => {
  it('is the nearest whole turn, by hand: 19 µm off is near enough at 5 µm', () => {
    expect(turnsOff(-0.219e-3, scale)).toBe(-1);
    expect(turnsOff(0.381e-3, scale)).toBe(2);
  });

  it('is 0 where the residual is no whole turn', () => {
    expect(turnsOff(-0.221e-3, scale)).toBe(0);
    expect(turnsOff(0.1e-3, scale)).toBe(0);
    expect(turnsOff(0.01e-3, scale)).toBe(0);
    expect(turnsOff(-0.01e-3, scale)).toBe(0);
  });

  it('refuses what cannot be', () => {
    expect(() => turnsOff(Number.NaN, scale)).toThrow(
      'residual must be a finite number of m (was NaN)',
    );
    expect(() => turnsOff(0, { ...scale, travelPerTurn: 0 })).toThrow(
      'travelPerTurn must be above 0 m (was 0)',
    );
    expect(() => turnsOff(0, { ...scale, repeatability: 0 })).toThrow(
      'repeatability must be above 0 m (was 0)',
    );
  });
});

describe('missedTurns', () => {
  it('finds nothing where nothing is missing, though the start is crooked', () =>
    expect(missedTurns(loads, extensions, scale)).toEqual(loads.map(() => 0)));

  it('finds one turn missing in one reading', () => {
    const once = [0, 0, 0, 0, 1, 0, 0, 0, 0, 0];
    expect(missedTurns(loads, lacking(once), scale)).toEqual(once);
  });

  it('finds a turn forgotten from one reading on, and a second later', () => {
    const stays = [0, 0, 0, 0, 0, 1, 1, 1, 2, 2];
    expect(missedTurns(loads, lacking(stays), scale)).toEqual(stays);
  });

  it('finds a turn counted too many in one reading', () => {
    const extra = [0, 0, 0, 0, 0, -1, 0, 0, 0, 0];
    expect(missedTurns(loads, lacking(extra), scale)).toEqual(extra);
  });

  it('offers nothing rather than the wrong reading where the miss hides in the crooked start', () =>
    expect(missedTurns(loads, lacking([0, 1, 0, 0, 0, 0, 0, 0, 0, 0]), scale)).toEqual(
      loads.map(() => 0),
    ));

  it('finds the turn in a straight series of any slope and odd or even length', () => {
    const slopes = evenly(1e-6, 90e-6);
    fc.assert(
      fc.property(slopes, fc.integer({ min: 6, max: 12 }), (slope, count) => {
        const steps = Array.from({ length: count }, (_, i) => i);
        const missing = steps.map((i) => (i < count / 2 ? 0 : 1));
        const shown = steps.map((i) => i * slope - (missing[i] as number) * scale.travelPerTurn);
        expect(missedTurns(steps, shown, scale)).toEqual(missing);
      }),
    );
  });

  it('finds the turn where the loads rise unevenly, by hand: 10 µm for each 1 of load', () => {
    const uneven = [1, 2, 4, 8, 9, 14, 15];
    const shown = [0, 10, 30, 70, 80 - 200, 130 - 200, 140 - 200].map((micron) => micron * 1e-6);
    expect(missedTurns(uneven, shown, scale)).toEqual([0, 0, 0, 0, 1, 1, 1]);
  });

  it('does not ask for the unit of the loads', () => {
    const stays = [0, 0, 0, 0, 0, 1, 1, 1, 2, 2];
    fc.assert(
      fc.property(evenly(-3, 6), (decades) => {
        const scaled = loads.map((load) => load * 10 ** decades);
        expect(missedTurns(scaled, lacking(stays), scale)).toEqual(stays);
      }),
    );
  });

  it('says nothing where half of the steps are a turn longer: their median is half a turn off', () =>
    expect(missedTurns([0, 1, 2, 3, 4], [0, 0, 0, 0.2e-3, 0.4e-3], scale)).toEqual([
      0, 0, 0, 0, 0,
    ]));

  it('refuses few readings, loads of another number, and loads that fall', () => {
    expect(() => missedTurns([1, 2, 3], [0, 0, 0], scale)).toThrow(
      'number of readings must be at least 4',
    );
    expect(() => missedTurns([1, 2, 3], [0, 0, 0, 0], scale)).toThrow('number of loads must be 4');
    expect(() => missedTurns([1, 2, 2, 3], [0, 0, 0, 0], scale)).toThrow(
      /^each load must be above the last \(was 0\)$/,
    );
    expect(() => missedTurns([1, 2, 3, 4], [0, 0, Number.NaN, 0], scale)).toThrow(
      'extensions[2] must be a finite number of m (was NaN)',
    );
  });
});
