import { describe, expect, it } from 'vitest';
import { turnsBracket } from '../../src/core/turns-bracket.ts';

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
  it('grows wider by what a coarsely read turn adds', () => {
    const coarse = turnsBracket({ ...series, turnResolution: 1 / 12 });
    const fine = turnsBracket(series);
    expect(coarse.high - coarse.low).toBeGreaterThan(fine.high - fine.low);
  });
  it('moves with the readings', () => {
    const moved = turnsBracket({ ...series, readings: readings.map((reading) => reading + 1e-4) });
    expect(moved.low).toBeCloseTo(turnsBracket(series).low + 1e-4, 12);
  });
  it('has no reading after the last when the straight part starts there', () => {
    const four = { ...series, turns: [0, 1, 2, 3], readings: micro([0, 40, 80, 120]) };
    expect(turnsBracket(four).high).toBeGreaterThan(40e-6);
  });
});
