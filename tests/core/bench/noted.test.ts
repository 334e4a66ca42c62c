import { describe, expect, it } from 'vitest';
import { type BenchLevel, benchLevels, benchMillAt } from '../../../src/core/bench/levels.ts';
import { believedArea, notedStress, notedWorksheet } from '../../../src/core/bench/noted.ts';
import { benchStress } from '../../../src/core/bench/series.ts';
import { evaluateWorksheet } from '../../../src/core/worksheet.ts';
import { perfectRows } from './perfect-learner.ts';

const SEEDS = Array.from({ length: 200 }, (_, seed) => seed);

/** Of 200 mills at a level: shares that give a stress, and of those that hold the truth; mean half-width over the truth. */
function coverageAt(level: BenchLevel) {
  const found = SEEDS.flatMap((seed) => {
    const mill = benchMillAt(seed, level);
    const { dragTorque } = mill.hidden;
    const { rows } = perfectRows(mill);
    const stress = notedStress(mill, rows, { dragTorque, isMeasured: true });
    const truth = benchStress(mill, mill.told.usualTorque);
    return stress.ready ? [stress.low <= truth && truth <= stress.high] : [];
  });
  return {
    gives: found.length / SEEDS.length,
    holds: found.filter((holds) => holds).length / found.length,
  };
}

describe('notedStress', () => {
  it.each(benchLevels)(
    'of a perfect learner holds the truth at level %s, in nine of ten mills or more',
    (level) => {
      const { gives, holds } = coverageAt(level);
      expect(gives).toBeGreaterThan(0.9);
      expect(holds).toBeGreaterThanOrEqual(0.9);
    },
  );
  it('is none of too few rows', () => {
    const mill = benchMillAt(1, 'clean');
    const { rows } = perfectRows(mill);
    const believed = { dragTorque: 1, isMeasured: true };
    expect(notedStress(mill, rows.slice(0, 4), believed).ready).toBe(false);
    expect(notedStress(mill, [], believed).ready).toBe(false);
  });
  it('is that of the whole worksheet', () => {
    const mill = benchMillAt(4, 'clean');
    const { rows } = perfectRows(mill);
    const believed = { dragTorque: mill.told.dragTorque, isMeasured: false };
    expect(evaluateWorksheet(notedWorksheet(mill, rows, believed)).measured).toEqual(
      notedStress(mill, rows, believed),
    );
  });
});

describe('notedWorksheet', () => {
  it('counts series from 1, and keeps rows in their order', () => {
    const rows = [
      { series: 0, place: 1, torque: 5, dial: 1e-3 },
      { series: 2, place: 1, torque: 6, dial: 2e-3 },
    ];
    const sheet = notedWorksheet(benchMillAt(1, 'clean'), rows, {
      dragTorque: undefined,
      isMeasured: true,
    });
    expect(sheet.readings.map(({ series, torque, dial }) => [series, torque, dial])).toEqual([
      [1, 5, 1e-3],
      [3, 6, 2e-3],
    ]);
    expect(sheet.tensioner.dragTorque).toBeUndefined();
    expect(sheet.rig.graduation).toBeCloseTo(2 * benchMillAt(1, 'clean').known.dialStep, 12);
  });
});

describe('believedArea', () => {
  it('is that of the label until the band is measured', () => {
    const mill = benchMillAt(3, 'worn');
    const { told, known } = mill;
    const area = (isMeasured: boolean) => believedArea(mill, { dragTorque: undefined, isMeasured });
    expect(area(false)).toBe(told.bodyWidth * told.thickness);
    expect(area(true)).toBe(known.bodyWidth * known.thickness);
    expect(area(true)).toBeLessThan(area(false));
  });
});
