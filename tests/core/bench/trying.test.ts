import { describe, expect, it } from 'vitest';
import { benchMillAt } from '../../../src/core/bench/levels.ts';
import { pluckedNote, turnsSlack } from '../../../src/core/bench/trying.ts';
import { mean, standardDeviation } from '../../../src/core/summary.ts';

const mill = () => benchMillAt(11, 'drag');

describe('turnsSlack', () => {
  it('is whether the torque is above the no-load torque, but for the scatter of the wrench', () => {
    const { dragTorque } = mill().hidden;
    for (let attempt = 0; attempt < 50; attempt += 1) {
      expect(turnsSlack(mill(), 1.1 * dragTorque, attempt)).toBe(true);
      expect(turnsSlack(mill(), 0.9 * dragTorque, attempt)).toBe(false);
    }
  });
  it('goes either way at the no-load torque itself, the same way for the same try', () => {
    const tries = Array.from({ length: 400 }, (_, attempt) =>
      turnsSlack(mill(), mill().hidden.dragTorque, attempt),
    );
    expect(Math.abs(tries.filter(Boolean).length - 200)).toBeLessThan(41); // 4 standard deviations
    expect(turnsSlack(mill(), mill().hidden.dragTorque, 3)).toBe(tries[3]);
  });
  it('refuses torques not above 0 and tries out of range', () => {
    expect(() => turnsSlack(mill(), 0, 0)).toThrow('torque must be above 0 N·m (was 0)');
    expect(() => turnsSlack(mill(), 1, 500_000)).toThrow(
      'attempt must be a whole number between 0 and 499999',
    );
  });
});

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
