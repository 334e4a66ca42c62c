import { describe, expect, it } from 'vitest';
import { benchMillAt, type LevelMill } from '../../../src/core/bench/levels.ts';
import { benchStress } from '../../../src/core/bench/series.ts';
import { byLine, foundSlip, wouldLead } from '../../../src/core/bench/working-out.ts';
import { randomSource } from '../../../src/core/random.ts';
import { perfectRows } from './perfect-learner.ts';

const MILLS = 30;

const believedAt = ({ hidden }: LevelMill, isMeasured = true) => ({
  dragTorque: hidden.dragTorque,
  isMeasured,
});

function askedAt(mill: LevelMill, answer: number, isMeasured = true) {
  return {
    rows: perfectRows(mill).rows,
    believed: believedAt(mill, isMeasured),
    truth: benchStress(mill, mill.told.usualTorque),
    answer,
  };
}

const leadsTo = (mill: LevelMill, isMeasured = true) =>
  Object.fromEntries(
    wouldLead(mill, perfectRows(mill).rows, believedAt(mill, isMeasured)).map(
      ({ slip, stress }) => [slip, stress],
    ),
  ) as Record<string, number>;

const toThree = (stress: number) => Number(stress.toPrecision(3));

describe('wouldLead', () => {
  it('takes the first row for zero: top reading less the first, times E over the gauge length', () => {
    const mill = benchMillAt(4, 'toe');
    const { rows } = perfectRows(mill);
    const way = mill.told.runsBackwards ? -1 : 1;
    const moved = ((rows.at(-1)?.dial as number) - (rows[0]?.dial as number)) * way;
    expect(leadsTo(mill)['firstReading']).toBeCloseTo((205e9 * moved) / mill.known.gaugeLength, 0);
  });
  it('doubles the stress of the line, and shares it by the worn section where the label is believed', () => {
    const mill = benchMillAt(6, 'worn');
    const line = byLine(mill, believedAt(mill))(perfectRows(mill).rows) as number;
    const { known, told } = mill;
    const share = (known.bodyWidth * known.thickness) / (told.bodyWidth * told.thickness);
    expect(leadsTo(mill)['oneStrand']).toBeCloseTo(2 * line, 0);
    expect(leadsTo(mill, false)['label']).toBeCloseTo(share * line, 0);
    expect(leadsTo(mill)['label']).toBeCloseTo(line, 0);
  });
  it('leads nowhere without rows', () => {
    const mill = benchMillAt(6, 'worn');
    for (const { stress } of wouldLead(mill, [], believedAt(mill))) expect(stress).toBeUndefined();
  });
});

describe('foundSlip', () => {
  it('finds a slip that was made, rounded to three digits, wherever it is clearly off', () => {
    let found = 0;
    for (let seed = 1; seed <= MILLS; seed += 1) {
      const mill = benchMillAt(seed, 'clean');
      const early = leadsTo(mill)['firstReading'] as number;
      const asked = askedAt(mill, toThree(early));
      const right = byLine(mill, asked.believed)(asked.rows) as number;
      const isOff = [asked.truth, right].every((from) => Math.abs(early - from) > 0.12 * from);
      if (!isOff) continue;
      found += 1;
      expect(foundSlip(mill, asked)?.slip).toBe('firstReading');
      expect(foundSlip(mill, askedAt(mill, toThree(2 * right)))?.slip).toBe('oneStrand');
    }
    expect(found).toBeGreaterThan(3);
  });
  it('finds none in an answer near the truth or near what the rows give', () => {
    for (let seed = 1; seed <= MILLS; seed += 1) {
      const mill = benchMillAt(seed, 'nasty');
      const { truth, rows, believed } = askedAt(mill, 0);
      const right = byLine(mill, believed)(rows) ?? truth;
      for (const near of [truth, right])
        for (const share of [0.96, 0.99, 1, 1.01, 1.04])
          expect(foundSlip(mill, askedAt(mill, share * near, false))).toBeUndefined();
    }
  });
  it('accuses by chance not even one guess in twenty', () => {
    const { uniform } = randomSource(3);
    let [guesses, accused] = [0, 0];
    for (let seed = 1; seed <= MILLS; seed += 1) {
      const mill = benchMillAt(seed, 'nasty');
      for (let guess = 0; guess < 10; guess += 1) {
        const { truth } = askedAt(mill, 0);
        guesses += 1;
        accused += Number(
          foundSlip(mill, askedAt(mill, (0.4 + 1.2 * uniform()) * truth, false)) !== undefined,
        );
      }
    }
    expect(accused / guesses).toBeLessThan(0.05);
  });
});
