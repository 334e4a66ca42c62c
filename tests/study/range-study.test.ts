/** The study of ranges in short: four boxes give a range that holds the truth, and each further one narrows it. */
import { describe, expect, it } from 'vitest';
import { benchStudyMill, inventedMills } from './range-mills.ts';
import { STAGES } from './range-stages.ts';
import { type StageTally, tallyStages } from './range-tally.ts';

const MILLS = 500;
const FEWER = 60; // three series take longer to work out
const SHORT = STAGES.slice(0, -1); // without the three series

// Simulated while the file loads: a loaded machine must not run into the time limit of a test.
const bench = tallyStages(
  Array.from({ length: MILLS }, (_, seed) => benchStudyMill(seed)),
  600,
  SHORT,
);
const joined = tallyStages(
  Array.from({ length: FEWER }, (_, seed) => benchStudyMill(seed)),
  600,
  ['dial', 'threeSeries'],
);
const invented = tallyStages(inventedMills, 5000, SHORT);
const each = (tallies: typeof bench) => SHORT.map((stage): StageTally => tallies[stage]);

describe('the interval shown, from four boxes to a series', () => {
  it('is there at every stage', () => {
    for (const { shown } of each(bench)) expect(shown).toBeGreaterThan(0.97 * MILLS);
    for (const { shown } of each(invented)) expect(shown).toBe(inventedMills.length);
  });

  it('holds the truth in at least 93 of 100 mills of the bench, and in every invented one', () => {
    for (const { held } of each(bench)) expect(held).toBeGreaterThanOrEqual(0.93);
    for (const { held } of each(invented)) expect(held).toBe(1);
  });

  it('has a middle width that never grows', () => {
    const widths = each(bench).map(({ halfWidth }) => halfWidth);
    for (const [at, width] of widths.slice(1).entries())
      expect(width).toBeLessThanOrEqual((widths[at] as number) * 1.005);
    expect(bench.dial.halfWidth).toBeLessThan(0.25 * bench.fourBoxes.halfWidth);
  });

  it('is hardly ever wider for one more box, or for a series with which the screw does not agree', () => {
    const { dial, ...boxes } = bench;
    for (const { wider } of Object.values(boxes)) expect(wider).toBeLessThan(0.03 * MILLS);
    expect(dial.wider).toBeLessThan(0.03 * MILLS);
  });

  it('is narrower still with three series, and holds the truth', () => {
    expect(joined.threeSeries.held).toBeGreaterThanOrEqual(0.93);
    expect(joined.threeSeries.halfWidth).toBeLessThan(0.9 * joined.dial.halfWidth);
  });
});
