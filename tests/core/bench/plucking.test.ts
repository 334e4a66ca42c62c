import { describe, expect, it } from 'vitest';
import { benchMillAt } from '../../../src/core/bench/levels.ts';
import { pluckedNote } from '../../../src/core/bench/plucking.ts';
import { mean, standardDeviation } from '../../../src/core/summary.ts';

const mill = () => benchMillAt(11, 'drag');

describe('pluckedNote', () => {
  it('is near the string’s f = √(σ/ρ)/2s, a little lower for the teeth', () => {
    const { known } = mill();
    const string = Math.sqrt(110e6 / 7850) / (2 * known.centreDistance); // by hand
    const note = pluckedNote(mill(), 110e6, 0) as number;
    expect(note / string).toBeGreaterThan(0.93);
    expect(note / string).toBeLessThan(1);
  });
  it('rises as the root of the stress', () => {
    const at = (stress: number) => pluckedNote(mill(), stress, 1) as number;
    expect(at(120e6) / at(30e6)).toBeCloseTo(2, 1);
  });
  it('is heard to a tenth of a hertz and scatters by 0.4 %', () => {
    const notes = Array.from(
      { length: 2000 },
      (_, pluck) => pluckedNote(mill(), 110e6, pluck) as number,
    );
    for (const note of notes.slice(0, 50)) expect(10 * note).toBeCloseTo(Math.round(10 * note), 9);
    expect(standardDeviation(notes) / mean(notes) / 0.004).toBeCloseTo(1, 1);
  });
  it('is none on a slack band', () => {
    expect(pluckedNote(mill(), 0, 0)).toBeUndefined();
    expect(pluckedNote(mill(), 1e4, 0)).toBeUndefined();
  });
  it('refuses plucks out of range', () =>
    expect(() => pluckedNote(mill(), 1e8, -1)).toThrow(
      'pluck must be a whole number between 0 and 499999',
    ));
});
