import { describe, expect, it } from 'vitest';
import type { Done } from '../../../src/core/bench/costs.ts';
import { type BenchLevel, benchMillAt, type LevelMill } from '../../../src/core/bench/levels.ts';
import { type Lifted, liftedLid, type Slip } from '../../../src/core/bench/lid.ts';
import { benchLooks } from '../../../src/core/bench/looks.ts';
import { benchStress } from '../../../src/core/bench/series.ts';
import { perfectRows } from './perfect-learner.ts';

const doneAt = (mill: LevelMill): Done => ({
  ...perfectRows(mill),
  believed: { dragTorque: mill.hidden.dragTorque, isMeasured: true },
});

const lifted = (seed: number, level: BenchLevel, answer?: number): Lifted => {
  const mill = benchMillAt(seed, level);
  return liftedLid(mill, doneAt(mill), answer);
};

const slipOf = ({ slips }: Lifted, slip: Slip) => slips.find(({ mistake }) => mistake === slip);
const costOf = (lid: Lifted, slip: Slip) => slipOf(lid, slip)?.cost as number;

describe('liftedLid', () => {
  it('has the truth at the top torque of the rows, and the stress that they measure', () => {
    const mill = benchMillAt(3, 'clean');
    const { topTorque, truth, measured, costs } = lifted(3, 'clean');
    expect(topTorque).toBe(mill.told.usualTorque);
    expect(truth).toBe(benchStress(mill, topTorque));
    expect(measured?.low).toBeLessThan(truth);
    expect(measured?.high).toBeGreaterThan(truth);
    expect(costs).toHaveLength(5);
  });
  it('has no stress where the rows give none, and the truth all the same', () => {
    const mill = benchMillAt(3, 'clean');
    const done = doneAt(mill);
    const { measured, truth } = liftedLid(
      mill,
      { ...done, rows: done.rows.slice(0, 2) },
      undefined,
    );
    expect(measured).toBeUndefined();
    expect(truth).toBe(benchStress(mill, done.rows[1]?.torque as number));
  });
  it('counts the first row for zero as what the band had stretched by then, and what was left of its coil set', () => {
    for (const seed of [1, 2, 3, 4, 5, 6, 7, 8]) {
      const mill = benchMillAt(seed, 'toe');
      const done = doneAt(mill);
      const { looks, zero } = benchLooks(mill, done.taken[0] as Done['taken'][number]);
      const way = mill.told.runsBackwards ? -1 : 1;
      const growth = ((looks[1]?.position as number) - (looks[0]?.position as number)) * way;
      const missed = zero - growth * mill.known.dialStep;
      const byHand = (205e9 * missed) / mill.known.gaugeLength;
      expect(costOf(liftedLid(mill, done, undefined), 'firstReading')).toBeCloseTo(byHand, 0);
    }
  });
  it('doubles the stress where one strand is counted for two', () => {
    const lid = lifted(4, 'clean');
    expect(costOf(lid, 'oneStrand')).toBeCloseTo(lid.truth, 0);
  });
  it('takes the label’s section for what it makes of the same force, nothing where nothing is worn', () => {
    const { told, known } = benchMillAt(6, 'worn');
    const lid = lifted(6, 'worn');
    const share = (known.bodyWidth * known.thickness) / (told.bodyWidth * told.thickness);
    expect(costOf(lid, 'label')).toBeCloseTo(lid.truth * (share - 1), 0);
    expect(costOf(lifted(6, 'clean'), 'label')).toBeCloseTo(0, 3);
  });
  it('sees where an answer leads, and nothing in a right one or in none', () => {
    const { truth } = lifted(4, 'clean');
    const made = (answer?: number) =>
      lifted(4, 'clean', answer)
        .slips.filter(({ isMade }) => isMade)
        .map(({ mistake }) => mistake);
    expect(made(2 * truth)).toEqual(['oneStrand']);
    expect(made(2.05 * truth)).toEqual([]);
    expect(made(truth)).toEqual([]);
    expect(made()).toEqual([]);
  });
  it('refuses to be lifted without a row above the slack band', () => {
    const mill = benchMillAt(3, 'clean');
    const done = doneAt(mill);
    const slack = [{ series: 0, place: 0, torque: 0, dial: 1e-3 }];
    for (const rows of [[], slack])
      expect(() => liftedLid(mill, { ...done, rows }, undefined)).toThrow(
        'rows must be at least one above 0 N·m',
      );
  });
});
