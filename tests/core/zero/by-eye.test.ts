import { describe, expect, it } from 'vitest';
import { randomSource } from '../../../src/core/random.ts';
import { mean, standardDeviation } from '../../../src/core/summary.ts';
import { zeroByNeedle, zeroByRuler } from '../../../src/core/zero/by-eye.ts';

const loads = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1];
const straight = loads.map((load) => 400e-6 * load);
const steady = { normal: () => 0 };

/** Readings whose first ones are too low, by so much at the first and a quarter of it at each next. */
const withToe = (toe: number) => straight.map((reading, i) => reading - toe / 4 ** i);

describe('zeroByNeedle', () => {
  it('is the first reading where the needle moves evenly from the start', () =>
    expect(zeroByNeedle(straight)).toBe(straight[0]));
  it('is the reading from which two steps are, on average, within a quarter of the upper ones', () => {
    // Steps by hand: 40 + 75, 40 + 18.75, 40 + 4.69 µm; the first two are 46.9 too much, the next two 11.7, over 40·¼.
    expect(zeroByNeedle(withToe(100e-6))).toBeCloseTo(withToe(100e-6)[2] as number, 12);
    expect(zeroByNeedle(withToe(20e-6))).toBeCloseTo(withToe(20e-6)[0] as number, 12);
  });
  it('is the first reading where no step is like the upper ones', () => {
    const jumping = [0, 1, 0, 1, 0, 1].map((reading) => reading * 1e-4);
    expect(zeroByNeedle(jumping)).toBe(0);
  });
});

describe('zeroByRuler', () => {
  it('carries a straight series back to no load', () =>
    expect(zeroByRuler(loads, straight, 5e-6, steady)).toBeCloseTo(0, 12));
  it('leaves out readings that are off the ruler by more than the eye forgives', () => {
    const found = zeroByRuler(loads, withToe(100e-6), 5e-6, steady);
    const upper = zeroByRuler(loads.slice(1), withToe(100e-6).slice(1), 5e-6, steady);
    expect(found).toBe(upper);
    expect(Math.abs(found)).toBeLessThan(20e-6);
  });
  it('forgives as much as the noise of the readings explains', () => {
    const bent = withToe(40e-6);
    expect(zeroByRuler(loads, bent, 5e-6, steady)).not.toBe(
      zeroByRuler(loads, bent, 20e-6, steady),
    );
  });
  it('is drawn by a hand that scatters by 8 µm', () => {
    const hand = randomSource(5);
    const found = Array.from({ length: 4000 }, () => zeroByRuler(loads, straight, 5e-6, hand));
    expect(Math.abs(mean(found))).toBeLessThan(0.5e-6); // 4 standard errors
    expect(standardDeviation(found) / 8e-6).toBeCloseTo(1, 1);
  });
});
