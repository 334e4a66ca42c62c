import { describe, expect, it } from 'vitest';
import { bandSteel } from '../../../src/core/assumptions.ts';
import { benchMillAt, type LevelMill } from '../../../src/core/bench/levels.ts';
import type { NotedRow } from '../../../src/core/bench/noted.ts';
import { benchStress } from '../../../src/core/bench/series.ts';
import { byUpperLine } from '../../../src/core/bench/upper-line.ts';
import { perfectRows } from './perfect-learner.ts';

const DRAG = 2;
const SLOPE = 2e-5; // m per N·m

/** Rows on a straight line from a zero of their series. */
const rowsAt = (mill: LevelMill, torques: readonly number[], series = 0): readonly NotedRow[] =>
  torques.map((torque, at) => ({
    series,
    place: at + 1,
    torque,
    dial: 5e-3 + series * 1e-3 + (mill.told.runsBackwards ? -1 : 1) * SLOPE * (torque - DRAG),
  }));

const believed = { dragTorque: DRAG, isMeasured: true };

describe('byUpperLine', () => {
  it('is the slope carried from the no-load torque to the top, times E over the gauge length', () => {
    for (const seed of [1, 2, 3, 4]) {
      const mill = benchMillAt(seed, 'clean');
      const { youngsModulus } = bandSteel;
      const stress = (youngsModulus * SLOPE * (12 - DRAG)) / mill.known.gaugeLength;
      const line = byUpperLine(mill, believed);
      expect(line(rowsAt(mill, [3, 6, 8, 10, 12]))).toBeCloseTo(stress, 0);
      const two = [...rowsAt(mill, [7, 12]), ...rowsAt(mill, [8, 12], 1)];
      expect(line(two)).toBeCloseTo(stress, 0);
    }
  });
  it('goes by the upper half alone, unless that has fewer than three torques', () => {
    const mill = benchMillAt(2, 'clean');
    const line = byUpperLine(mill, believed);
    const bent = (rows: readonly NotedRow[]) =>
      rows.map((row) => (row.torque < 7 ? { ...row, dial: row.dial + 2e-4 } : row));
    const upper = rowsAt(mill, [3, 4, 7, 9, 12]);
    expect(line(bent(upper))).toBeCloseTo(line(upper) as number, 0);
    const few = rowsAt(mill, [3, 4, 9, 12]);
    expect(Math.abs((line(bent(few)) as number) - (line(few) as number))).toBeGreaterThan(1e7);
  });
  it('leaves out a row a whole turn off, and keeps one that is a little off', () => {
    const mill = benchMillAt(2, 'clean');
    const line = byUpperLine(mill, believed);
    const right = rowsAt(mill, [3, 7, 8, 9, 10, 11, 12]);
    const spoilt = right.map((row) =>
      row.torque === 8 ? { ...row, dial: row.dial + mill.known.dialTurn } : row,
    );
    expect(line(spoilt)).toBeCloseTo(line(right) as number, 0);
    const crooked = right.map((row) =>
      row.torque === 8 ? { ...row, dial: row.dial + 2e-5 } : row,
    );
    expect(Math.abs((line(crooked) as number) - (line(right) as number))).toBeGreaterThan(1e5);
  });
  it('is near the truth for a perfect learner, within a tenth in nine mills of ten', () => {
    const near = Array.from({ length: 40 }, (_, seed) => {
      const mill = benchMillAt(seed, 'clean');
      const { dragTorque } = mill.hidden;
      const { rows } = perfectRows(mill);
      const stress = byUpperLine(mill, { dragTorque, isMeasured: true })(rows) as number;
      return Math.abs(stress / benchStress(mill, mill.told.usualTorque) - 1) < 0.1;
    });
    expect(near.filter((is) => is).length).toBeGreaterThanOrEqual(36);
  });
  it('gives none from fewer than three rows under load, or at one torque alone', () => {
    const mill = benchMillAt(2, 'clean');
    const line = byUpperLine(mill, believed);
    for (const torques of [[], [1], [1, 1.5, 2], [1, 8, 12], [8.1, 8.1, 8.1]])
      expect(line(rowsAt(mill, torques))).toBeUndefined();
  });
});
