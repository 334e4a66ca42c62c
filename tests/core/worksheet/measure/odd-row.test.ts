import { describe, expect, it } from 'vitest';
import { benchMill } from '../../../../src/core/bench/mill.ts';
import { benchSeries, benchStress } from '../../../../src/core/bench.ts';
import { dialTravel } from '../../../../src/core/elasticity/dial-reading.ts';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { oddRow } from '../../../../src/core/worksheet/measure/odd-row.ts';
import { worksheetRows, worksheetSeries } from '../../../../src/core/worksheet/measure/readings.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millA, worksheetMills } from '../fixtures/mills.ts';

const seriesOf = (mill: Worksheet) => numbersOf(worksheetSeries(mill, worksheetRows(mill)));

/** A series of 10 µm for each newton metre, with some rows moved off it. */
function straight(count: number, moved: Readonly<Record<number, number>> = {}) {
  const torques = Array.from({ length: count }, (_, i) => 2 + i);
  return {
    ...seriesOf(millA),
    rows: [...torques.keys()],
    torques,
    elongations: torques.map((torque, i) => 10e-6 * torque + (moved[i] ?? 0)),
    topTorque: 1 + count,
    repeatability: 5e-6,
  };
}

describe('oddRow', () => {
  it.each(Object.entries(worksheetMills))('has nothing to say of mill %s', (_, mill) =>
    expect(oddRow(seriesOf(mill))).toBeUndefined(),
  );

  it.each([
    [6, 60e-6],
    [6, -60e-6],
    [9, 80e-6],
    [4, -80e-6],
  ])('names row %i where it is %f m off', (row, off) => {
    const found = oddRow(straight(10, { [row]: off }));
    expect(found?.row).toBe(row);
    expect(found?.off).toBeCloseTo(off, 12);
  });

  // Between its neighbours, 1 and 2 N·m away on each side, chance is √(1 + 1/4) of one reading's.
  it('lets five standard deviations pass, and no more', () => {
    const chance = Math.hypot(5e-6, 10e-6 * 0.1) * Math.sqrt(1.25);
    expect(oddRow(straight(10, { 6: 4.9 * chance }))).toBeUndefined();
    expect(oddRow(straight(10, { 6: 5.1 * chance }))?.row).toBe(6);
  });

  // At 20 N·m the wrench is off by 1 %, 0.2 N·m; uneven torques, so that the line is carried on to the last.
  it('allows for the wrench, and for how far the line is carried on', () => {
    const torques = [2, 4, 12, 13, 15, 16, 20];
    const slope = 20e-6;
    const near = [12, 13, 15, 16];
    const squares = near.reduce((sum, torque) => sum + (torque - 14) ** 2, 0);
    const chance = Math.hypot(5e-6, slope * 0.2) * Math.sqrt(1 + 1 / 4 + 6 ** 2 / squares);
    const off = (times: number) => ({
      ...straight(7),
      torques,
      topTorque: 20,
      elongations: torques.map((torque, i) => slope * torque + (i === 6 ? times * chance : 0)),
    });
    expect(oddRow(off(4.9))).toBeUndefined();
    expect(oddRow(off(5.1))?.row).toBe(6);
  });

  it('keeps silent on a bend and on a clamp that slipped in the middle: there is not one row', () => {
    const slipped = { 5: 90e-6, 6: 90e-6, 7: 90e-6, 8: 90e-6, 9: 90e-6 };
    expect(oddRow(straight(10, slipped))).toBeUndefined();
    const torques = straight(12).torques;
    const bend = Object.fromEntries(torques.map((torque, i) => [i, 6e-6 * (torque - 2) ** 2]));
    expect(oddRow(straight(12, bend))).toBeUndefined();
  });

  it('does not judge the rows up to a third of the top torque, nor four rows or fewer', () => {
    expect(oddRow(straight(10, { 0: 200e-6, 1: -200e-6 }))).toBeUndefined();
    expect(oddRow(straight(5, { 3: 200e-6 }))).toBeUndefined();
    expect(oddRow(straight(1))).toBeUndefined();
  });

  it('cannot tell a row from its neighbours where these were all taken at one torque', () => {
    const series = straight(10, { 6: 200e-6 });
    const torques = series.torques.map((torque, i) => (i === 6 ? torque : 11));
    expect(oddRow({ ...series, torques })).toBeUndefined();
  });

  it('on 300 simulated mills without a slip never cries wolf, and finds 8 in 10 rows 50 µm off', () => {
    const told = { well: 0, found: 0, tried: 0 };
    for (let seed = 0; seed < 300; seed += 1) {
      const series = simulated(seed);
      if (series === undefined) continue;
      told.tried += 1;
      if (oddRow(series)) told.well += 1;
      const row = 5 + (seed % 5);
      const off = seed % 2 === 0 ? 50e-6 : -50e-6;
      const elongations = series.elongations.map((value, i) => value + (i === row ? off : 0));
      if (oddRow({ ...series, elongations })?.row === row) told.found += 1;
    }
    expect(told.tried).toBeGreaterThan(200);
    expect(told.well).toBe(0);
    expect(told.found / told.tried).toBeGreaterThan(0.8);
  });
});

/** Ten readings on a mill of the practice bench; undefined where a clamp slipped. */
function simulated(seed: number) {
  const mill = benchMill(seed);
  const { dragTorque } = mill.hidden;
  const topTorque = dragTorque + 120e6 / benchStress(mill, dragTorque + 1);
  const torques = Array.from({ length: 10 }, (_, i) => topTorque * (0.1 + 0.1 * i));
  const { readings, slipped } = benchSeries(mill, torques);
  if (slipped) return undefined;
  const elongations = readings.map(({ dial, wholeTurns }) =>
    dialTravel({
      first: readings[0]?.dial as number,
      shown: dial,
      wholeTurns,
      travelPerTurn: mill.known.dialTurn,
      runsBackwards: true,
    }),
  );
  return { ...straight(10), torques, elongations, topTorque };
}
