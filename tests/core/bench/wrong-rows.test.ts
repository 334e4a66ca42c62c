import { describe, expect, it } from 'vitest';
import { benchMillAt, type LevelMill } from '../../../src/core/bench/levels.ts';
import { benchLooks, stepsPerTurn } from '../../../src/core/bench/looks.ts';
import type { NotedRow } from '../../../src/core/bench/noted.ts';
import { putRight, shownAt, wrongRows } from '../../../src/core/bench/wrong-rows.ts';
import { perfectRows } from './perfect-learner.ts';

const MILL = benchMillAt(5, 'clean');
const SERIES = perfectRows(MILL);

/** The row at a place with another dial, in steps. */
const withDial = (at: number, stepsOf: (shown: number) => number, mill = MILL) => {
  const { dialStep } = mill.known;
  const rows = SERIES.rows.map((row, place) =>
    place === at ? { ...row, dial: stepsOf(row.dial / dialStep) * dialStep } : row,
  );
  return { taken: SERIES.taken, rows };
};

const wrongAt = (at: number, stepsOf: (shown: number) => number) =>
  wrongRows(MILL, withDial(at, stepsOf)).map((row) => [row.at, row.how]);

/** A look after letting off as a row. */
function letOffRow(mill: LevelMill): NotedRow {
  const [taken] = SERIES.taken;
  if (!taken) throw new Error('a series must be taken');
  const { looks, released } = benchLooks(mill, taken);
  const dial = released.position * mill.known.dialStep;
  return { series: 0, place: looks.length, torque: 0, dial };
}

describe('wrongRows', () => {
  it('finds none where each dial was read right, or a step beside', () => {
    expect(wrongRows(MILL, SERIES)).toEqual([]);
    expect(wrongAt(4, (shown) => shown + 1)).toEqual([]);
    expect(wrongAt(4, (shown) => shown - 1)).toEqual([]);
  });
  it('tells a lost turn, a wrong sign and another unit from other misreadings', () => {
    const perTurn = stepsPerTurn(MILL);
    expect(wrongAt(3, (shown) => shown + perTurn)).toEqual([[3, 'turns']]);
    expect(wrongAt(3, (shown) => shown - 2 * perTurn)).toEqual([[3, 'turns']]);
    expect(wrongAt(3, (shown) => -shown)).toEqual([[3, 'sign']]);
    expect(wrongAt(3, (shown) => shown / 25.4)).toEqual([[3, 'unit']]);
    expect(wrongAt(3, (shown) => shown * 25.4)).toEqual([[3, 'unit']]);
    expect(wrongAt(3, (shown) => shown + 2)).toEqual([[3, 'misread']]);
  });
  it('says what the dial showed, and of which series', () => {
    const [row] = wrongRows(
      MILL,
      withDial(6, (shown) => shown + 7),
    );
    expect(row).toMatchObject({ at: 6, series: 0 });
    expect(row?.shown).toBeCloseTo(SERIES.rows[6]?.dial as number, 12);
  });
  it('knows the look after letting off', () => {
    const right = { taken: SERIES.taken, rows: [...SERIES.rows, letOffRow(MILL)] };
    expect(wrongRows(MILL, right)).toEqual([]);
    const off = { ...letOffRow(MILL), dial: 0 };
    expect(wrongRows(MILL, { ...right, rows: [off] })).toHaveLength(1);
  });
  it('refuses a row that is no look', () => {
    for (const part of [{ place: 99 }, { series: 3 }]) {
      const rows = SERIES.rows.map((row) => ({ ...row, ...part }));
      expect(() => wrongRows(MILL, { taken: SERIES.taken, rows })).toThrow(
        'rows must be looks that were taken',
      );
    }
  });
});

describe('shownAt', () => {
  it('is what the dial showed, in steps, or would have on a mill that differs', () => {
    const { dialStep } = MILL.known;
    const shown = shownAt(MILL, SERIES);
    expect(shown.map((steps) => steps * dialStep)).toEqual(SERIES.rows.map(({ dial }) => dial));
    expect(shownAt(MILL, SERIES, { barWarming: 20 })).not.toEqual(shown);
  });
});

describe('putRight', () => {
  it('gives every wrong row what the dial showed, and leaves the others', () => {
    const wrong = withDial(2, (shown) => shown + 40);
    const right = putRight(wrong.rows, wrongRows(MILL, wrong));
    for (const [at, { dial }] of right.entries())
      expect(dial).toBeCloseTo(SERIES.rows[at]?.dial as number, 12);
    expect(right[3]).toBe(wrong.rows[3]);
  });
});
