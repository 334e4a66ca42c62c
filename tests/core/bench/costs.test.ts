import { describe, expect, it } from 'vitest';
import {
  benchAccount,
  benchStages,
  type Cause,
  type Stage,
} from '../../../src/core/bench/costs.ts';
import {
  type BenchLevel,
  benchLevels,
  benchMillAt,
  type LevelMill,
} from '../../../src/core/bench/levels.ts';
import { stepsPerTurn } from '../../../src/core/bench/looks.ts';
import { benchStress } from '../../../src/core/bench/series.ts';
import { byUpperLine } from '../../../src/core/bench/upper-line.ts';
import { byLine } from '../../../src/core/bench/working-out.ts';
import type { Done } from '../../../src/core/bench/wrong-rows.ts';
import { randomSource } from '../../../src/core/random.ts';
import { perfectRows } from './perfect-learner.ts';

const HASTY = { clamps: 'quick', hands: 'bare' } as const;

const doneAt = (mill: LevelMill, part: Parameters<typeof perfectRows>[1] = {}): Done => ({
  ...perfectRows(mill, part),
  believed: { dragTorque: mill.hidden.dragTorque, isMeasured: true },
});

const truthOf = (mill: LevelMill) => benchStress(mill, mill.told.usualTorque);

const stagesOf = (mill: LevelMill, done: Done, answer?: number, method = byLine) =>
  benchStages(mill, done, { truth: truthOf(mill), answer }, method);

const stageOf = (stages: readonly Stage[], cause: Cause) =>
  stages.find((stage) => stage.cause === cause) as Stage;

/** What a cause adds to the stress of the stage before it. */
function costOf(stages: readonly Stage[], cause: Cause): number {
  const at = stages.findIndex((stage) => stage.cause === cause);
  return (stages[at]?.stress as number) - (stages[at - 1]?.stress as number);
}

const madeAt = (mill: LevelMill, done: Done, answer?: number) =>
  stagesOf(mill, done, answer)
    .filter(({ isMade }) => isMade)
    .map(({ cause }) => cause);

const without = (mill: LevelMill, hidden: Partial<LevelMill['hidden']>): LevelMill => ({
  ...mill,
  hidden: { ...mill.hidden, ...hidden },
});

/** The rows from a place on with so many steps more, or that one alone. */
const moved = (mill: LevelMill, done: Done, places: readonly number[], steps: number): Done => ({
  ...done,
  rows: done.rows.map((row, at) =>
    places.includes(at) ? { ...row, dial: row.dial + steps * mill.known.dialStep } : row,
  ),
});

const mills = (level: BenchLevel, count = 25) =>
  Array.from({ length: count }, (_, seed) => benchMillAt(seed, level));

const lineOf = (mill: LevelMill, { rows, believed }: Done) => byLine(mill, believed)(rows);

describe('benchStages', () => {
  it('has only straightening and scatter on a cool bar read without mistakes', () => {
    const mill = without(benchMillAt(2, 'clean'), { barWarming: 0 });
    expect(madeAt(mill, doneAt(mill))).toEqual(['scatter', 'toe']);
  });
  it('takes slips and warmth out as the same series on a mill without them would read', () => {
    let slips = 0;
    for (const mill of mills('nasty', 16)) {
      const stages = stagesOf(mill, doneAt(mill, HASTY));
      const firm = without(mill, { slipChance: 0 });
      const cool = without(firm, { barWarming: 0 });
      const straight = without(cool, { coilShift: 0 });
      for (const [cause, other] of [
        ['warmed', firm],
        ['toe', cool],
        ['scatter', straight],
      ] as const) {
        const right = lineOf(mill, { ...doneAt(other, HASTY), believed: doneAt(mill).believed });
        const { stress } = stageOf(stages, cause);
        if (right === undefined) expect(stress).toBeUndefined();
        else expect(stress).toBeCloseTo(right, 0);
      }
      slips += Number(stageOf(stages, 'slipped').isMade);
    }
    expect(slips).toBeGreaterThan(4);
  });
  it('names the series whose rows a slip moved', () => {
    let told = 0;
    for (const mill of mills('slipping', 14)) {
      const [first, second] = [0, 1].map((attempt) => perfectRows(mill, { ...HASTY, attempt }));
      const rows = [
        ...(first?.rows ?? []),
        ...(second?.rows ?? []).map((row) => ({ ...row, series: 1 })),
      ];
      const taken = [...(first?.taken ?? []), ...(second?.taken ?? [])];
      const both: Done = { ...doneAt(mill), taken, rows };
      const byUpper = (done: Done) => stagesOf(mill, done, undefined, byUpperLine); // sooner, and moves the same rows
      const { series } = stageOf(byUpper(both), 'slipped');
      const alone = [0, 1].filter((attempt) => {
        const one = { ...both, rows: rows.filter((row) => row.series === attempt) };
        return stageOf(byUpper(one), 'slipped').isMade;
      });
      expect([...series].sort()).toEqual(alone);
      told += Number(series.length === 1);
      expect(stageOf(byUpper(both), 'misread').isMade).toBe(false);
    }
    expect(told).toBeGreaterThan(2);
  });
  it('finds misread rows and lost turns, each row by its place, and what they cost', () => {
    const mill = benchMillAt(5, 'clean');
    const right = doneAt(mill);
    const turn = stepsPerTurn(mill);
    const spoilt = moved(mill, moved(mill, right, [8], 3), [2], turn);
    const stages = stagesOf(mill, spoilt);
    expect(stageOf(stages, 'misread').rows.map(({ at }) => at)).toEqual([8]);
    expect(stageOf(stages, 'turns').rows.map(({ at }) => at)).toEqual([2]);
    const misread = lineOf(mill, moved(mill, right, [8], 3)) as number;
    expect(stageOf(stages, 'misread').stress).toBeCloseTo(misread, 0);
    expect(stageOf(stages, 'turns').stress).toBe(lineOf(mill, spoilt));
  });
  it('makes a no-load torque a mistake from 0.2 N·m on, or where none is believed', () => {
    const mill = without(benchMillAt(6, 'clean'), { dragTorque: 1, barWarming: 0 });
    const believing = (dragTorque: number | undefined): Done => ({
      ...doneAt(mill),
      believed: { dragTorque, isMeasured: true },
    });
    expect(madeAt(mill, believing(1.19))).not.toContain('noLoad');
    expect(madeAt(mill, believing(1.21))).toContain('noLoad');
    expect(madeAt(mill, believing(undefined))).toContain('noLoad');
    const cost = (lineOf(mill, believing(3)) as number) - (lineOf(mill, believing(1)) as number);
    expect(costOf(stagesOf(mill, believing(3)), 'noLoad')).toBeCloseTo(cost, 0);
  });
  it('follows an early zero through a lost turn: the turn costs E over the gauge length', () => {
    const mill = benchMillAt(5, 'nasty');
    const turn = stepsPerTurn(mill);
    const done = moved(mill, doneAt(mill), [6, 7, 8, 9], -turn);
    const { dialStep, dialTurn, gaugeLength } = mill.known;
    const way = mill.told.runsBackwards ? -1 : 1;
    const [first, top] = [done.rows[0], done.rows[9]].map((row) => row?.dial as number);
    const answer = (205e9 * way * ((top as number) - (first as number))) / gaugeLength;
    const stages = stagesOf(mill, done, answer);
    expect(stages.map(({ cause }) => cause)).toEqual([
      'scatter',
      'toe',
      'warmed',
      'slipped',
      'noLoad',
      'firstReading',
      'misread',
      'turns',
      'sum',
    ]);
    expect(costOf(stages, 'turns')).toBeCloseTo((-205e9 * way * dialTurn) / gaugeLength, 0);
    expect(Math.abs(costOf(stages, 'sum'))).toBeLessThan((205e9 * dialStep) / gaugeLength);
  });
});

describe('benchAccount', () => {
  it('adds up from the truth to the answer, whatever was done at whichever level', () => {
    const { uniform } = randomSource(11);
    let unworkable = 0;
    for (const level of benchLevels)
      for (const mill of mills(level, 8)) {
        const hands = uniform() < 0.5 ? HASTY : {};
        const turn = stepsPerTurn(mill);
        const places = [Math.floor(10 * uniform()), Math.floor(10 * uniform())];
        const steps = [0, 3, turn, -turn, 40][Math.floor(5 * uniform())] as number;
        const done = moved(mill, doneAt(mill, hands), places, steps);
        const [truth, answer] = [truthOf(mill), (0.5 + uniform()) * truthOf(mill)];
        const lines = benchAccount(truth, stagesOf(mill, done, answer));
        const total = lines.reduce((sum, { cost }) => sum + (cost as number), truth);
        expect(total).toBeCloseTo(answer, 0);
        const told = lines.flatMap(({ stages }) => stages.map(({ cause }) => cause));
        expect(told).toEqual(madeAt(mill, done, answer));
        unworkable += Number(lines.some(({ stages }) => stages.length > 1));
      }
    expect(unworkable).toBeGreaterThan(5);
  });
  it('joins what gives no stress with the next that does, or says that nothing comes out', () => {
    const mill = benchMillAt(5, 'clean');
    const done = doneAt(mill);
    const few = { ...done, rows: done.rows.slice(0, 3) };
    const joined = benchAccount(1e8, benchStages(mill, few, { truth: 1e8, answer: 9e7 }));
    expect(joined).toHaveLength(1);
    expect(joined[0]?.cost).toBeCloseTo(-1e7, 0);
    const open = benchAccount(1e8, benchStages(mill, few, { truth: 1e8, answer: undefined }));
    expect(open.map(({ cost }) => cost)).toEqual([undefined]);
  });
});
