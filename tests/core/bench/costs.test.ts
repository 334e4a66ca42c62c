import { describe, expect, it } from 'vitest';
import { benchCosts, type Cost, type Done, type Mistake } from '../../../src/core/bench/costs.ts';
import { benchMillAt, type LevelMill } from '../../../src/core/bench/levels.ts';
import { stepsPerTurn } from '../../../src/core/bench/looks.ts';
import type { NotedRow } from '../../../src/core/bench/noted.ts';
import { notedStress } from '../../../src/core/bench/noted.ts';
import { perfectRows } from './perfect-learner.ts';

const HASTY = { clamps: 'quick', hands: 'bare' } as const;

const doneAt = (mill: LevelMill, part: Parameters<typeof perfectRows>[1] = {}): Done => ({
  ...perfectRows(mill, part),
  believed: { dragTorque: mill.hidden.dragTorque, isMeasured: true },
});

const costOf = (mill: LevelMill, done: Done, mistake: Mistake): Cost =>
  benchCosts(mill, done).find((cost) => cost.mistake === mistake) as Cost;

const madeAt = (mill: LevelMill, done: Done) =>
  benchCosts(mill, done)
    .filter(({ isMade }) => isMade)
    .map(({ mistake }) => mistake);

const without = (mill: LevelMill, hidden: Partial<LevelMill['hidden']>): LevelMill => ({
  ...mill,
  hidden: { ...mill.hidden, ...hidden },
});

/** A row changed, the others as they are. */
const changed = (done: Done, at: number, part: Partial<NotedRow>): Done => ({
  ...done,
  rows: done.rows.map((row, place) => (place === at ? { ...row, ...part } : row)),
});

const stressOf = (mill: LevelMill, { rows, believed }: Done) =>
  notedStress(mill, rows, believed)?.stress as number;

const mills = (level: 'clean' | 'slipping' | 'warming' | 'nasty', count = 25) =>
  Array.from({ length: count }, (_, seed) => benchMillAt(seed, level));

describe('benchCosts', () => {
  it('finds nothing made by a learner without mistakes on a bar that stays cool', () => {
    const mill = without(benchMillAt(2, 'clean'), { barWarming: 0 });
    expect(madeAt(mill, doneAt(mill))).toEqual([]);
    for (const { cost } of benchCosts(mill, doneAt(mill))) expect(cost).toBe(0);
  });
  it('of a slip is the stress of the same series less that of the same mill without slips', () => {
    let slips = 0;
    for (const mill of mills('slipping')) {
      const done = doneAt(mill, HASTY);
      const { isMade, cost, without: right } = costOf(mill, done, 'slipped');
      const still = doneAt(without(mill, { slipChance: 0 }), HASTY);
      expect(right).toBeCloseTo(stressOf(mill, { ...still, believed: done.believed }), 0);
      if (!isMade || cost === undefined) continue;
      slips += 1;
      expect(cost).toBeCloseTo(stressOf(mill, done) - (right as number), 0);
    }
    expect(slips).toBeGreaterThan(8);
  });
  it('of a warm bar is the stress of the same series less that of the same mill with a cool one', () => {
    for (const mill of mills('warming')) {
      const done = doneAt(mill, HASTY);
      const { isMade, cost } = costOf(mill, done, 'warmed');
      const cool = doneAt(without(mill, { barWarming: 0 }), HASTY);
      expect(isMade).toBe(true);
      expect(cost).toBeCloseTo(
        stressOf(mill, done) - stressOf(mill, { ...cool, believed: done.believed }),
        0,
      );
    }
  });
  it('of a misread row is found, and is the stress with it less that with the dial’s own', () => {
    for (const mill of mills('clean', 10)) {
      const right = doneAt(mill);
      const dial = (right.rows[9]?.dial as number) + 2 * mill.known.dialStep;
      const wrong = changed(right, 9, { dial });
      expect(madeAt(mill, wrong)).toContain('misread');
      expect(madeAt(mill, wrong)).not.toContain('turns');
      const { cost } = costOf(mill, wrong, 'misread');
      expect(cost).toBeCloseTo(stressOf(mill, wrong) - stressOf(mill, right), 0);
      expect(Math.sign(cost as number)).toBe(mill.told.runsBackwards ? -1 : 1);
    }
  });
  it('of a lost turn is told apart from a misread row, whichever way it went', () => {
    const mill = benchMillAt(5, 'clean');
    const right = doneAt(mill);
    for (const turns of [1, -1]) {
      const travel = turns * stepsPerTurn(mill) * mill.known.dialStep;
      const wrong = changed(right, 3, { dial: (right.rows[3]?.dial as number) + travel });
      expect(madeAt(mill, wrong)).toContain('turns');
      expect(madeAt(mill, wrong)).not.toContain('misread');
      expect(costOf(mill, wrong, 'turns').without).toBeCloseTo(stressOf(mill, right), 0);
    }
  });
  it('lets a reading be off by half a mark', () => {
    const mill = without(benchMillAt(2, 'clean'), { barWarming: 0 });
    const right = doneAt(mill);
    const near = (steps: number) =>
      changed(right, 4, { dial: (right.rows[4]?.dial as number) + steps * mill.known.dialStep });
    expect(madeAt(mill, near(1))).toEqual([]);
    expect(madeAt(mill, near(2))).toEqual(['misread']);
  });
  it('of a no-load torque is made by 0.2 N·m or more, or where none is believed', () => {
    const mill = without(benchMillAt(6, 'clean'), { dragTorque: 1, barWarming: 0 });
    const done = doneAt(mill);
    const believing = (dragTorque: number | undefined): Done => ({
      ...done,
      believed: { dragTorque, isMeasured: true },
    });
    expect(madeAt(mill, believing(1.19))).toEqual([]);
    expect(madeAt(mill, believing(1.21))).toEqual(['noLoad']);
    expect(madeAt(mill, believing(undefined))).toEqual(['noLoad']);
    expect(costOf(mill, believing(3), 'noLoad').cost).toBeCloseTo(
      stressOf(mill, believing(3)) - stressOf(mill, done),
      0,
    );
  });
  it('is unknown where the rows give no stress, and says what they would give without', () => {
    const mill = benchMillAt(5, 'clean');
    const right = doneAt(mill);
    const few: Done = { ...right, rows: right.rows.slice(0, 3) };
    for (const { cost, without: right } of benchCosts(mill, few)) {
      expect(cost).toBeUndefined();
      expect(right).toBeUndefined();
    }
    const spoilt = changed(right, 9, { dial: (right.rows[9]?.dial as number) + 0.004 });
    expect(costOf(mill, spoilt, 'misread')).toMatchObject({ cost: undefined });
    expect(costOf(mill, spoilt, 'misread').without).toBeCloseTo(stressOf(mill, right), 0);
  });
  it('takes each row in its own series', () => {
    const mill = without(benchMillAt(8, 'slipping'), { barWarming: 0 });
    const [first, second] = [0, 1].map((attempt) => perfectRows(mill, { attempt }));
    const rows = [
      ...(first?.rows ?? []),
      ...(second?.rows ?? []).map((row) => ({ ...row, series: 1 })),
    ];
    const taken = [...(first?.taken ?? []), ...(second?.taken ?? [])];
    const done: Done = {
      taken,
      rows,
      believed: { dragTorque: mill.hidden.dragTorque, isMeasured: true },
    };
    expect(madeAt(mill, done)).not.toContain('misread');
  });
  it('refuses a row that is no look', () => {
    const mill = benchMillAt(1, 'clean');
    for (const part of [{ place: 99 }, { series: 3 }])
      expect(() => benchCosts(mill, changed(doneAt(mill), 2, part))).toThrow(
        'rows must be looks that were taken',
      );
  });
});
