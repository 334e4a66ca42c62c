import { describe, expect, it } from 'vitest';
import { linearScale, ticks } from '../../src/figures/scale.ts';

describe('linearScale', () => {
  it('takes the ends to the ends and the middle to the middle', () =>
    expect([0, 5, 10].map(linearScale([0, 10], [300, 100]))).toEqual([300, 200, 100]));
});

describe('ticks', () => {
  it('are round in the reader’s own unit and stand at its SI value', () => {
    const shown = ticks(0, 100e6, 'stress', 'us', 3);
    expect(shown.map(({ text }) => text)).toEqual(['0', '5000', '10\u202f000']);
    expect(shown[1]?.value).toBeCloseTo(5000 * 6894.757293168, 3);
  });

  it('write clean fractions, and lie inside both ends', () => {
    const shown = ticks(0.05, 0.7, 'torque', 'metric', 7);
    expect(shown.map(({ text }) => text)).toEqual([
      '0.1',
      '0.2',
      '0.3',
      '0.4',
      '0.5',
      '0.6',
      '0.7',
    ]);
  });

  it('go below nought where the quantity does', () => {
    const shown = ticks(-27e6, 27e6, 'stress', 'metric', 3);
    expect(shown.map(({ text }) => text)).toEqual(['−20', '0', '20']);
  });
});
