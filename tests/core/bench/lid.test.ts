import { describe, expect, it } from 'vitest';
import { type BenchLevel, benchMillAt, type LevelMill } from '../../../src/core/bench/levels.ts';
import { type Lifted, liftedLid } from '../../../src/core/bench/lid.ts';
import { benchStress } from '../../../src/core/bench/series.ts';
import type { Done } from '../../../src/core/bench/wrong-rows.ts';
import { perfectRows } from './perfect-learner.ts';

const doneAt = (mill: LevelMill): Done => ({
  ...perfectRows(mill),
  believed: { dragTorque: mill.hidden.dragTorque, isMeasured: true },
});

const lifted = (seed: number, level: BenchLevel, answer?: number): Lifted => {
  const mill = benchMillAt(seed, level);
  return liftedLid(mill, doneAt(mill), { answer });
};

describe('liftedLid', () => {
  it('has the truth at the top torque of the rows, and the stress that they measure', () => {
    const mill = benchMillAt(3, 'clean');
    const { topTorque, truth, measured, refusal } = lifted(3, 'clean');
    expect(topTorque).toBe(mill.told.usualTorque);
    expect(truth).toBe(benchStress(mill, topTorque));
    expect(measured?.low).toBeLessThan(truth);
    expect(measured?.high).toBeGreaterThan(truth);
    expect(refusal).toBeUndefined();
  });
  it('says why the rows give no stress, and the truth all the same', () => {
    const mill = benchMillAt(3, 'clean');
    const done = doneAt(mill);
    const few = { ...done, rows: done.rows.slice(0, 2) };
    const { measured, refusal, truth } = liftedLid(mill, few, { answer: undefined });
    expect(measured).toBeUndefined();
    expect(refusal?.code).toBe('tooFewReadings');
    expect(truth).toBe(benchStress(mill, done.rows[1]?.torque as number));
  });
  it('accounts for the way to the answer, or to the rows where there is none', () => {
    const total = ({ truth, lines }: Lifted) =>
      lines.reduce((sum, { cost }) => sum + (cost as number), truth);
    expect(total(lifted(4, 'nasty', 9e7))).toBeCloseTo(9e7, 0);
    const silent = lifted(4, 'clean');
    expect(total(silent)).toBeCloseTo(silent.measured?.stress as number, 0);
  });
  it('shows where each slip would lead with the rows put right', () => {
    const mill = benchMillAt(4, 'clean');
    const done = doneAt(mill);
    const dial = (done.rows[5]?.dial as number) + mill.known.dialTurn;
    const spoilt = {
      ...done,
      rows: done.rows.map((row, at) => (at === 5 ? { ...row, dial } : row)),
    };
    const slipsOf = (of: Done) => liftedLid(mill, of, { answer: undefined }).slips;
    expect(slipsOf(spoilt).map(({ slip }) => slip)).toEqual(['firstReading', 'oneStrand', 'label']);
    for (const [at, { stress }] of slipsOf(spoilt).entries())
      expect(stress).toBeCloseTo(slipsOf(done)[at]?.stress as number, 0);
  });
  it('has what the note says, if one was heard', () => {
    const mill = benchMillAt(2, 'clean');
    const heard = { torque: mill.told.usualTorque, note: 45 };
    const note = (said: typeof heard | undefined) =>
      liftedLid(mill, doneAt(mill), { answer: undefined, note: said }).plucked;
    expect(note(heard)?.torque).toBe(heard.torque);
    expect(note(undefined)).toBeUndefined();
  });
  it('refuses to be lifted without a row above the slack band', () => {
    const mill = benchMillAt(3, 'clean');
    const done = doneAt(mill);
    const slack = [{ series: 0, place: 0, torque: 0, dial: 1e-3 }];
    for (const rows of [[], slack])
      expect(() => liftedLid(mill, { ...done, rows }, { answer: undefined })).toThrow(
        'rows must be at least one above 0 N·m',
      );
  });
});
