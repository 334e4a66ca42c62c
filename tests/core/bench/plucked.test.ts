import { describe, expect, it } from 'vitest';
import { benchMillAt } from '../../../src/core/bench/levels.ts';
import { notedStress } from '../../../src/core/bench/noted.ts';
import { pluckedStress } from '../../../src/core/bench/plucked.ts';
import { pluckedNote } from '../../../src/core/bench/plucking.ts';
import { benchStress } from '../../../src/core/bench/series.ts';
import { perfectRows } from './perfect-learner.ts';

const SEEDS = Array.from({ length: 20 }, (_, at) => at + 1);

function heardAt(seed: number) {
  const mill = benchMillAt(seed, 'clean');
  const torque = mill.told.usualTorque;
  const note = pluckedNote(mill, benchStress(mill, torque), 0) as number;
  const believed = { dragTorque: mill.hidden.dragTorque, isMeasured: true };
  const measured = notedStress(mill, perfectRows(mill).rows, believed);
  return { mill, heard: { torque, note }, believed, dial: measured.ready ? measured : undefined };
}

describe('pluckedStress', () => {
  it('holds the truth in nineteen of twenty, and has it beside', () => {
    const held = SEEDS.filter((seed) => {
      const { mill, heard, believed } = heardAt(seed);
      const { low, high, truth } = pluckedStress(mill, heard, believed, undefined) as {
        low: number;
        high: number;
        truth: number;
      };
      expect(truth).toBe(benchStress(mill, heard.torque));
      return low <= truth && truth <= high;
    });
    expect(held.length).toBeGreaterThanOrEqual(18);
  });
  it('is joined with the dial between the two, and narrower than either', () => {
    let joined = 0;
    for (const seed of SEEDS) {
      const { mill, heard, believed, dial } = heardAt(seed);
      const plucked = pluckedStress(mill, heard, believed, dial);
      if (!dial || !plucked?.together) continue;
      joined += 1;
      const { together, low, high } = plucked;
      const ends = [plucked.stress, dial.stress].sort((a, b) => a - b);
      expect(together.stress).toBeGreaterThanOrEqual(ends[0] as number);
      expect(together.stress).toBeLessThanOrEqual(ends[1] as number);
      expect(together.high - together.low).toBeLessThan(Math.min(high - low, dial.high - dial.low));
    }
    expect(joined).toBeGreaterThan(10);
  });
  it('is not joined with a dial that disagrees, nor with one of another torque', () => {
    const { mill, heard, believed, dial } = heardAt(2);
    if (!dial) throw new Error('the rows must give a stress');
    const far = { ...dial, stress: 2 * dial.stress };
    const elsewhere = { ...dial, topTorque: dial.topTorque + 1 };
    for (const other of [far, elsewhere, undefined])
      expect(pluckedStress(mill, heard, believed, other)?.together).toBeUndefined();
  });
  it('is nothing where no tight band sounds so', () => {
    const { mill, heard, believed, dial } = heardAt(2);
    expect(pluckedStress(mill, { ...heard, note: 5 }, believed, dial)).toBeUndefined();
  });
});
