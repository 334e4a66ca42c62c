import { describe, expect, it } from 'vitest';
import { type BenchLevel, benchLevels, benchMillAt } from '../../../src/core/bench/levels.ts';
import { benchMill } from '../../../src/core/bench/mill.ts';
import { benchStress } from '../../../src/core/bench/series.ts';
import { thread } from '../../../src/core/threads.ts';

const SEEDS = Array.from({ length: 300 }, (_, seed) => seed);
const millsAt = (level: BenchLevel) => SEEDS.map((seed) => benchMillAt(seed, level));

const expectWithin = (values: readonly number[], low: number, high: number) => {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  expect(least).toBeGreaterThanOrEqual(low - 1e-12);
  expect(least).toBeLessThan(low + (high - low) / 10);
  expect(most).toBeLessThanOrEqual(high + 1e-12);
  expect(most).toBeGreaterThan(high - (high - low) / 10);
};

describe('benchMillAt', () => {
  it('leaves the mill of a seed as it is drawn, but for its dial and its slipping clamp', () => {
    for (const seed of SEEDS.slice(0, 50)) {
      const [plain, clean] = [benchMill(seed), benchMillAt(seed, 'clean')];
      const { dialStep, dialTurn } = clean.known;
      expect(clean.known).toEqual({ ...plain.known, dialStep, dialTurn });
      expect(clean.hidden).toEqual({ ...plain.hidden, slipChance: 0 });
    }
  });
  it('is the same again from the same seed and level', () => {
    for (const level of benchLevels) expect(benchMillAt(9, level)).toEqual(benchMillAt(9, level));
  });
  it('changes one thing at each level, and all of them at the last', () => {
    for (const seed of SEEDS.slice(0, 50)) {
      const { known, hidden } = benchMillAt(seed, 'clean');
      const at = (level: BenchLevel) => benchMillAt(seed, level);
      const hiddenAt = (level: BenchLevel) => at(level).hidden;
      const { dragTorque } = hiddenAt('drag');
      const { barWarming } = hiddenAt('warming');
      const { slipChance } = hiddenAt('slipping');
      const { coilShift, coilStress } = hiddenAt('toe');
      const { bodyWidth, thickness } = at('worn').known;
      expect(at('drag')).toMatchObject({ known, hidden: { ...hidden, dragTorque } });
      expect(at('warming')).toMatchObject({ known, hidden: { ...hidden, barWarming } });
      expect(at('slipping')).toMatchObject({ known, hidden: { ...hidden, slipChance } });
      expect(at('toe')).toMatchObject({ known, hidden: { ...hidden, coilShift, coilStress } });
      expect(at('worn')).toMatchObject({ known: { ...known, bodyWidth, thickness }, hidden });
      const all = { dragTorque, barWarming, slipChance, coilShift, coilStress };
      expect(at('nasty')).toMatchObject({
        known: { ...known, bodyWidth, thickness },
        hidden: { ...hidden, ...all },
      });
    }
  });
  it('draws each thing that goes wrong from one end to the other', () => {
    const nasty = millsAt('nasty');
    expectWithin(
      nasty.map(({ hidden }) => hidden.dragTorque),
      2.5,
      4,
    );
    expectWithin(
      nasty.map(({ hidden }) => hidden.barWarming),
      2,
      4,
    );
    expectWithin(
      nasty.map(({ hidden }) => Math.abs(hidden.coilShift)),
      150e-6,
      300e-6,
    );
    expectWithin(
      nasty.map(({ hidden }) => hidden.coilStress),
      11e6,
      17e6,
    );
    expect(new Set(nasty.map(({ hidden }) => hidden.slipChance))).toEqual(new Set([0.12]));
    expectWithin(
      nasty.map(({ told, known }) => told.bodyWidth - known.bodyWidth),
      2e-3,
      4e-3,
    );
    expectWithin(
      nasty.map(({ told, known }) => told.thickness - known.thickness),
      4e-5,
      1e-4,
    );
    expect(new Set(nasty.map(({ hidden }) => Math.sign(hidden.coilShift))).size).toBe(2);
  });
  it('tells the section as new, which is the true one where nothing is worn', () => {
    for (const { told, known } of millsAt('clean')) {
      expect(told.bodyWidth).toBe(known.bodyWidth);
      expect(told.thickness).toBe(known.thickness);
    }
  });
  it('tells the no-load torque to a tenth, unless nobody has tried it', () => {
    for (const { told, hidden } of millsAt('clean'))
      expect(Math.abs((told.dragTorque as number) - hidden.dragTorque)).toBeLessThanOrEqual(
        0.05 + 1e-12,
      );
    for (const level of ['drag', 'nasty'] as const)
      expect(millsAt(level).every(({ told }) => told.dragTorque === undefined)).toBe(true);
  });
  it('is tightened to about 100 to 125 MPa as a rule, and allowed 150 MPa at most', () => {
    for (const level of benchLevels)
      for (const mill of millsAt(level).slice(0, 60)) {
        const { usualTorque, mostTorque } = mill.told;
        const perTorque = benchStress(mill, mill.hidden.dragTorque + 1);
        expect(Number.isInteger(usualTorque) && Number.isInteger(mostTorque)).toBe(true);
        expect(benchStress(mill, usualTorque)).toBeGreaterThan(100e6 - perTorque / 2);
        expect(benchStress(mill, usualTorque)).toBeLessThan(125e6 + perTorque / 2);
        expect(benchStress(mill, mostTorque)).toBeLessThanOrEqual(150e6);
        expect(benchStress(mill, mostTorque + 1)).toBeGreaterThan(150e6);
        expect(mostTorque).toBeGreaterThan(usualTorque);
      }
  });
  it('has a dial of a hundred marks read to the half, in either unit, running either way', () => {
    const clean = millsAt('clean');
    for (const { known } of clean) expect(known.dialTurn / known.dialStep).toBeCloseTo(200, 9);
    expect(new Set(clean.map(({ known }) => known.dialTurn)).size).toBe(2);
    const backwards = clean.filter(({ told }) => told.runsBackwards).length;
    expect(Math.abs(backwards / clean.length - 2 / 3)).toBeLessThan(0.11); // 4 standard deviations
  });
  it('has a washer that goes over its thread and rubs where the collar is', () => {
    for (const { told, known } of millsAt('clean')) {
      const { inner, outer } = told.washer;
      expect(Math.abs(inner - thread(known.screwThread).majorDiameter - 1e-3)).toBeLessThan(
        0.25e-3 + 1e-12,
      );
      expect((inner + outer) / 2).toBeCloseTo(known.collarDiameter, 12);
      expect(outer).toBeGreaterThan(inner);
    }
  });
  it('has teeth of 5 to 8 mm', () =>
    expectWithin(
      millsAt('clean').map(({ told }) => told.teeth),
      5e-3,
      8e-3,
    ));
  it.each([-1, 1.5, 2 ** 32])('refuses the seed %s', (seed) =>
    expect(() => benchMillAt(seed, 'clean')).toThrow('seed must be a whole number'),
  );
});
