/** The torques of a planned series: as a wrench can be set to, and the reader's own numbers as typed. */
import { describe, expect, it } from 'vitest';
import { fromSi, toSi } from '../../../src/units/si-value.ts';
import { seriesStepBelow, seriesTorques } from '../../../src/worksheet/plan/torques.ts';

const typed = { first: 2.13, firstIsTyped: true, top: 14.37, steps: 10 };

describe('the torques of a series', () => {
  it('keep what was typed, and are round between', () => {
    const torques = seriesTorques(typed, 'metric');
    expect([torques[0], torques.at(-1)]).toEqual([2.13, 14.37]);
    expect(torques.slice(1, -1)).toEqual([3.5, 5, 6, 7.5, 9, 10.5, 11.5, 13]);
  });

  it('begin at a round one where none was typed', () =>
    expect(seriesTorques({ ...typed, firstIsTyped: false }, 'metric')[0]).toBe(2));

  it('are round in the reader’s own unit', () => {
    const ends = { ...typed, first: toSi(3, 'torque', 'us'), top: toSi(33, 'torque', 'us') };
    const shown = seriesTorques(ends, 'us').map((torque) => fromSi(torque, 'torque', 'us'));
    for (const torque of shown) expect(torque).toBeCloseTo(Math.round(torque), 9);
  });

  it.each([
    [60, 6],
    [14.5, 30],
    [3, 30],
    [1.2, 12],
  ])('rise from each to the next up to %s N·m in %s steps', (top, steps) => {
    const torques = seriesTorques({ first: top / 10, firstIsTyped: false, top, steps }, 'metric');
    expect(torques).toHaveLength(steps);
    for (const [at, torque] of torques.slice(1).entries())
      expect(torque).toBeGreaterThan(torques[at] as number);
  });
});

describe('the next load down', () => {
  it('is never above what it is asked for, and as a wrench shows it', () => {
    expect(seriesStepBelow(13.67, 'metric', 'torque')).toBeCloseTo(13.6, 9);
    expect(seriesStepBelow(61.9, 'metric', 'torque')).toBeCloseTo(61, 9);
    expect(seriesStepBelow(0.01, 'metric', 'torque')).toBe(0);
  });
});
