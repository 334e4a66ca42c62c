import { describe, expect, it } from 'vitest';
import { planSimulator } from '../../../src/core/plan/simulator.ts';
import { randomSource } from '../../../src/core/random.ts';

const plan = {
  ...{ gaugeLength: 0.6, graduation: 1e-5, readTo: 5e-6, firstShare: 0.1 },
  ...{ steps: 9, series: 1, stressAtTop: 110e6, youngsModulus: 205e9 },
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

  it('ends nowhere where the worksheet would give no stress', () =>
    expect(mean({ stressAtTop: 1e6 })).toBe(Number.POSITIVE_INFINITY));
});
