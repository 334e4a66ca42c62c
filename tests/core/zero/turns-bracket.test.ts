import { describe, expect, it } from 'vitest';
import { turnsBracket } from '../../../src/core/zero/turns-bracket.ts';

const micro = (values: number[]) => values.map((value) => value * 1e-6);
// Slack of five steps without movement, then 40 µm a step.
const turns = Array.from({ length: 12 }, (_, i) => i / 12);
const readings = micro(turns.map((_, i) => Math.max(0, i - 5) * 40));
const series = { turns, readings, repeatability: 5e-6, turnResolution: 0 };

describe('turnsBracket', () => {
  it('starts the straight part at the knee and holds the knee between its ends', () => {
    const { start, slope, low, high, probabilityAll } = turnsBracket(series);
    expect(start).toBe(5);
    expect(slope).toBeCloseTo(480e-6, 12);
    expect(probabilityAll).toBeLessThan(1e-6);
    expect(low).toBeLessThan(0);
    expect(high).toBeGreaterThan(0);
  });
  it('sees no start in a series that is straight throughout', () => {
    const straight = turnsBracket({ ...series, readings: turns.map((turn) => 480e-6 * turn) });
    expect(straight.start).toBe(0);
    expect(straight.probabilityAll).toBeGreaterThan(0.5);
  });
  it('weighs a long series too, whose evidence is beyond what exp can hold', () => {
    const long = Array.from({ length: 60 }, (_, i) => i / 12);
    const readings = long.map((turn) => 480e-6 * turn);
    const { start, probabilityAll } = turnsBracket({ ...series, turns: long, readings });
    expect(start).toBe(0);
    expect(probabilityAll).toBeGreaterThan(0.5);
  });
  it('grows wider by what a coarsely read turn adds', () => {
    const coarse = turnsBracket({ ...series, turnResolution: 1 / 12 });
    const fine = turnsBracket(series);
    expect(coarse.high - coarse.low).toBeGreaterThan(fine.high - fine.low);
  });
  it('moves with the readings', () => {
    const moved = turnsBracket({ ...series, readings: readings.map((reading) => reading + 1e-4) });
    expect(moved.low).toBeCloseTo(turnsBracket(series).low + 1e-4, 12);
  });
  it('takes 4 readings as one straight part, wider by the repeatability alone, by hand', () => {
    const four = { ...series, turns: [0, 1, 2, 3], readings: micro([0, 40, 80, 120]) };
    const { low, high, probabilityAll } = turnsBracket(four);
    // Nothing is left over, so that the spread is √(2s²/4) = s/√2, twice on either side.
    expect(low).toBeCloseTo(-Math.SQRT2 * 5e-6, 14);
    expect(high).toBeCloseTo(40e-6 + Math.SQRT2 * 5e-6, 14);
    expect(probabilityAll).toBe(1);
  });
  it('adds the step of the turns over √12 by the slope of the later half, by hand', () => {
    // 40 µm a turn and a step of 0.3 turns: 12/√12 = √12 µm; with 2 µm of the dial √(4 + 12) = 4 µm.
    const bent = { turns: [3, 4, 5, 6, 7, 8], readings: micro([90, 95, 110, 140, 180, 220]) };
    const coarse = turnsBracket({ ...bent, repeatability: 2e-6, turnResolution: 0.3 });
    const shaky = turnsBracket({ ...bent, repeatability: 4e-6, turnResolution: 0 });
    expect(coarse.low).toBeCloseTo(shaky.low, 15);
    expect(coarse.high).toBeCloseTo(shaky.high, 15);
    expect(coarse.probabilityAll).toBeCloseTo(shaky.probabilityAll, 12);
  });
});

// A first reading d above a straight line through four others, at turns 1 to 5 and 40 µm a turn.
// The evidence of n straight readings, integrated over line and scatter by hand, is
// (n·Sxx)^−½ · Γ(n/2) · π^−(n−2)/2 · (2s² + squares left over)^−n/2, over the free range of 200 µm
// for each reading before them. All five: n·Sxx = 50, left over 0.4d²; the last four: 20 and 0.
describe('turnsBracket of five readings, worked by hand', () => {
  const s = 5e-6;
  const bent = (d: number) => ({
    turns: [1, 2, 3, 4, 5],
    readings: [d, 40e-6, 80e-6, 120e-6, 160e-6],
    repeatability: s,
    turnResolution: 0,
  });
  // With 0.4d² = 2s²·k the odds of all five are ¾·√(20/50) · 200 µm/(√2·s) · (1 + k)^−5/2.
  const odds = (k: number) => (0.75 * Math.sqrt(0.4) * 200e-6) / (Math.SQRT2 * s) / (1 + k) ** 2.5;

  it.each([1, 3, 8])('weighs all five against the last four where k = %s', (k) => {
    const { probabilityAll, start } = turnsBracket(bent(s * Math.sqrt(5 * k)));
    expect(probabilityAll).toBeCloseTo(odds(k) / (1 + odds(k)), 12);
    expect(start).toBe(odds(k) > 1 ? 0 : 1);
  });
  it('carries the last four back to turn 1, and up to turn 3', () => {
    const { low, high, slope } = turnsBracket(bent(s * Math.sqrt(15)));
    expect(slope).toBeCloseTo(40e-6, 14);
    expect(low).toBeCloseTo(-Math.SQRT2 * s, 14);
    expect(high).toBeCloseTo(80e-6 + Math.SQRT2 * s, 14);
  });
});
