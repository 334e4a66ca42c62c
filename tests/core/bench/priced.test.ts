import { describe, expect, it } from 'vitest';
import { benchStages } from '../../../src/core/bench/costs.ts';
import { benchMillAt } from '../../../src/core/bench/levels.ts';
import { pricedStages } from '../../../src/core/bench/priced.ts';
import { benchStress } from '../../../src/core/bench/series.ts';
import { byUpperLine } from '../../../src/core/bench/upper-line.ts';
import type { Done } from '../../../src/core/bench/wrong-rows.ts';
import { perfectRows } from './perfect-learner.ts';

const mill = benchMillAt(27, 'nasty');
const learner = { truth: benchStress(mill, mill.told.usualTorque), answer: 1.2e8 };

const done = (turns: number, hands: 'bare' | 'gloved' = 'gloved'): Done => {
  const { taken, rows } = perfectRows(mill, { clamps: 'quick', hands });
  return {
    taken,
    rows: rows.map((row, at) =>
      at === 6 ? { ...row, dial: row.dial + turns * mill.known.dialTurn } : row,
    ),
    believed: { dragTorque: mill.hidden.dragTorque, isMeasured: true },
  };
};

describe('pricedStages', () => {
  it('goes by the worksheet where that finds a stress at every stage', () => {
    const clean = benchMillAt(3, 'clean');
    const right: Done = {
      ...perfectRows(clean),
      believed: { dragTorque: clean.hidden.dragTorque, isMeasured: true },
    };
    const { stages, isByUpperLine } = pricedStages(clean, right, { ...learner, answer: undefined });
    expect(isByUpperLine).toBe(false);
    expect(stages).toEqual(benchStages(clean, right, { ...learner, answer: undefined }));
  });
  it('prices a slipped clamp and a lost turn apart, by one line for all of them', () => {
    const { stages, isByUpperLine } = pricedStages(mill, done(1), learner);
    expect(isByUpperLine).toBe(true);
    expect(stages).toEqual(benchStages(mill, done(1), learner, byUpperLine));
    const made = stages.filter(({ isMade }) => isMade);
    expect(made.map(({ cause }) => cause)).toEqual(
      expect.arrayContaining(['slipped', 'turns', 'sum']),
    );
    for (const { stress } of made) expect(stress).toBeDefined();
    const at = (cause: string) => stages.find((stage) => stage.cause === cause)?.stress as number;
    expect(at('misread')).toBeCloseTo(at('noLoad'), 0);
    const turn = Math.abs(at('turns') - at('misread'));
    expect(turn).toBeGreaterThan(0);
    expect(turn).toBeLessThan(0.2 * learner.truth);
  });
  it('leaves gaps where not even the line gives a stress', () => {
    const few = { ...done(0), rows: done(0).rows.slice(0, 2) };
    const { stages, isByUpperLine } = pricedStages(mill, few, learner);
    expect(isByUpperLine).toBe(false);
    expect(stages.some(({ isMade, stress }) => isMade && stress === undefined)).toBe(true);
  });
});
