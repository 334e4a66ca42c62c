import { describe, expect, it } from 'vitest';
import { planSimulator } from '../../../src/core/plan/simulator.ts';
import { randomSource } from '../../../src/core/random.ts';

const plan = {
  ...{ gaugeLength: 0.6, graduation: 1e-5, readTo: 5e-6, firstShare: 0.1 },
  ...{ steps: 9, series: 1, stressAtTop: 110e6, youngsModulus: 205e9 },
  loads: undefined as readonly number[] | undefined,
};
const mean = (change: Partial<typeof plan>) => {
  const simulate = planSimulator({ ...plan, ...change });
  const random = randomSource(3);
  const widths = Array.from({ length: 40 }, () => simulate(random));
  return widths.reduce((sum, width) => sum + width, 0) / widths.length;
};

describe('planSimulator', () => {
  it('makes up a measurement that is surer with a longer bar, more series, a finer dial', () => {
    const plain = mean({});
    expect(mean({ gaugeLength: 0.9 })).toBeLessThan(plain);
    expect(mean({ series: 3 })).toBeLessThan(plain);
    expect(mean({ graduation: 2e-6, readTo: 2e-6 })).toBeLessThan(plain);
  });

  it('starts above no load, whatever the plan says, and is rough where it starts high', () => {
    expect(mean({ firstShare: 0 })).toBeLessThan(1);
    expect(mean({ firstShare: 0.35 })).toBeGreaterThan(mean({ firstShare: 0.25 }));
  });

  it('takes the loads that are given in place of evenly spaced ones', () => {
    const evenly = Array.from({ length: 9 }, (_, at) => 0.1 + (0.9 * at) / 8);
    expect(mean({ loads: evenly })).toBeCloseTo(mean({}), 9);
    const bunchedAtTop = [0.1, 0.84, 0.86, 0.88, 0.9, 0.92, 0.94, 0.97, 1];
    expect(mean({ loads: bunchedAtTop })).not.toBeCloseTo(mean({}), 2);
    expect(mean({ loads: [0, ...evenly.slice(1)] })).toBeLessThan(1); // nothing is read at no load
  });

  it('ends nowhere where the worksheet would give no stress', () =>
    expect(mean({ stressAtTop: 1e6 })).toBe(Number.POSITIVE_INFINITY));
});
