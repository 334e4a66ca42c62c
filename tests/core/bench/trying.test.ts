import { describe, expect, it } from 'vitest';
import { benchMillAt } from '../../../src/core/bench/levels.ts';
import { turnsSlack } from '../../../src/core/bench/trying.ts';

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
