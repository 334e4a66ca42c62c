/** Several series kept apart: the same as one list with numbers, a zero for each, surer than one alone, refusals. */
import { describe, expect, it } from 'vitest';
import { randomSource } from '../../../src/core/random.ts';
import { zeroFromSeveral, zeroFromTorque } from '../../../src/core/zero.ts';

const TORQUES = [4, 8, 12, 16, 20, 24, 28, 32, 36]; // N·m
const DRAG = 2; // N·m
const PER_TORQUE = 10e-6; // m per N·m
const { normal } = randomSource(8);

const loadingFrom = (zero: number) => ({
  torques: TORQUES,
  readings: TORQUES.map((torque) => zero + PER_TORQUE * (torque - DRAG) + 2e-6 * normal()),
});
const series = [0.0001, 0.0004, 0.0007].map(loadingFrom);
const several = zeroFromSeveral({ series, dragTorque: DRAG });

describe('zeroFromSeveral', () => {
  it('is zeroFromTorque of one list whose readings carry the number of their series', () =>
    expect(several).toEqual(
      zeroFromTorque({
        torques: series.flatMap(({ torques }) => torques),
        readings: series.flatMap(({ readings }) => readings),
        series: series.flatMap(({ torques }, place) => torques.map(() => place + 1)),
        dragTorque: DRAG,
      }),
    ));

  it('finds the zero of each, and the elongation of all', () => {
    expect(several.zeros.map((each) => each.series)).toEqual([1, 2, 3]);
    for (const [place, zero] of [0.0001, 0.0004, 0.0007].entries()) {
      const found = several.zeros[place];
      expect(found?.low).toBeLessThan(zero);
      expect(found?.high).toBeGreaterThan(zero);
    }
    const truth = PER_TORQUE * (36 - DRAG);
    expect(several.elongationLow).toBeLessThan(truth);
    expect(several.elongationHigh).toBeGreaterThan(truth);
  });

  it('is surer than any one of them', () => {
    for (const one of series)
      expect(several.sdElongation).toBeLessThan(
        zeroFromSeveral({ series: [one], dragTorque: DRAG }).sdElongation,
      );
  });

  it('wants lists of one length, and one series that is long enough', () => {
    const short = { torques: TORQUES, readings: [0] };
    expect(() => zeroFromSeveral({ series: [short], dragTorque: DRAG })).toThrow(RangeError);
    expect(() => zeroFromSeveral({ series: [], dragTorque: DRAG })).toThrow(RangeError);
  });
});
