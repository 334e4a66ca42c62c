/** The bracket from turns: by hand, its limits, what cannot show a start, refusals. */
import { describe, expect, it } from 'vitest';
import { turnsBracket } from '../../../src/core/zero/turns-bracket.ts';
import { zeroFromTurns } from '../../../src/core/zero.ts';

const micro = (values: number[]) => values.map((value) => value * 1e-6);
describe('zeroFromTurns', () => {
  // The invented mill C, worked at 40 digits: the turn resolution is already in the repeatability.
  const millC = {
    turns: [
      0, 0.0416666667, 0.125, 0.208333333, 0.291666667, 0.416666667, 0.625, 0.833333333, 1.04166667,
      1.25, 1.41666667, 1.625,
    ],
    readings: micro([0, -30, -50, -70, -90, -75, -50, -15, 25, 55, 80, 120]),
    turnResolution: 1 / 24,
  };
  it('accepts mill C, which was stepped finely at the start', () => {
    const found = zeroFromTurns(millC);
    expect(found.accepted).toBe(true);
    expect(found.low).toBeCloseTo(-152.41e-6, 7);
    expect(found.high).toBeCloseTo(-66.405e-6, 7);
    expect(found.zero).toBeCloseTo((found.low + found.high) / 2, 15);
    expect(found.standardUncertainty * Math.sqrt(12)).toBeCloseTo(found.high - found.low, 15);
  });
  it('refuses mill A, which started tight', () => {
    const turns = [0, 0.0833, 0.1389, 0.1667, 0.2222, 0.2778, 0.3333, 0.3889, 0.4306, 0.4861];
    const found = zeroFromTurns({
      turns,
      readings: micro([0, -5, 10, 20, 45, 65, 95, 115, 145, 155]),
    });
    expect(found.accepted).toBe(false);
    expect(found.warnings).toEqual(['startNotSeen']);
  });
  it('tells of readings that fall, and of a dial that stands', () => {
    const times = (factor: number) => ({
      ...millC,
      readings: millC.readings.map((r) => factor * r),
    });
    expect(zeroFromTurns(times(-1)).warnings).toContain('doesNotRise');
    expect(zeroFromTurns(times(0)).warnings).toContain('doesNotRise');
  });
  const twelfths = Array.from({ length: 9 }, (_, i) => i / 12);
  it.each([
    [1, ['startNotSeen']],
    [2, []],
  ])('sees a start after 2 readings before it, not 1: %s gives %j', (before, warnings) => {
    const readings = micro(twelfths.map((_, i) => 40 * Math.max(0, i - before)));
    expect(zeroFromTurns({ turns: twelfths, readings })).toMatchObject({
      accepted: warnings.length === 0,
      warnings,
    });
  });
  it('sees none in a bend that chance might make, though the best line starts late', () => {
    const readings = micro(twelfths.map((_, i) => 40 * i + 12 * Math.max(0, 3 - i)));
    const series = { turns: twelfths, readings, repeatability: 5e-6, turnResolution: 0 };
    const { start, probabilityAll } = turnsBracket(series);
    expect(start).toBeGreaterThanOrEqual(2);
    expect(probabilityAll).toBeGreaterThan(0.05);
    expect(zeroFromTurns(series).warnings).toEqual(['startNotSeen']);
  });
  it('refuses turns that do not rise, and too few of them', () => {
    expect(() => zeroFromTurns({ turns: [0, 1, 1, 2], readings: [0, 0, 0, 0] })).toThrow(
      'step to turns[2] must be above 0 (was 0)',
    );
    expect(() => zeroFromTurns({ turns: [0, 1, 2], readings: [0, 0, 0] })).toThrow(
      'number of readings must be at least 4 (was 3)',
    );
    expect(() => zeroFromTurns({ ...millC, turnResolution: -1 })).toThrow(/turnResolution/);
    expect(() => zeroFromTurns({ ...millC, repeatability: 0 })).toThrow(
      'repeatability must be above 0 m (was 0)',
    );
  });
  it('refuses what is no number, and says where', () => {
    const broken = (list: readonly number[]) => list.map((v, i) => (i === 2 ? Number.NaN : v));
    expect(() => zeroFromTurns({ ...millC, turns: broken(millC.turns) })).toThrow(
      /^turns\[2\] must be a finite number \(was NaN\)$/,
    );
    expect(() => zeroFromTurns({ ...millC, readings: broken(millC.readings) })).toThrow(
      /^readings\[2\] must be a finite number of m \(was NaN\)$/,
    );
  });
});
