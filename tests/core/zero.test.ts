import { describe, expect, it } from 'vitest';
import { randomSource } from '../../src/core/random.ts';
import { envelopeFits } from '../../src/core/zero/envelope.ts';
import { envelopeEstimate } from '../../src/core/zero/estimate.ts';
import { zeroByUpperHalf, zeroFromSeveral, zeroFromTorque } from '../../src/core/zero.ts';

const micro = (values: number[]) => values.map((value) => value * 1e-6);
// The invented mill A; the figures beside it were computed apart, at 40 digits.
const millA = {
  torques: [1.5, 3, 4.5, 5.5, 7, 8.5, 10, 11.5, 13, 14.5],
  readings: micro([0, -5, 10, 20, 45, 65, 95, 115, 145, 155]),
  dragTorque: 0.8,
};
const straight = (torques: number[], perTorque: number) => ({
  torques,
  readings: torques.map((torque) => 30e-6 + perTorque * (torque - 0.8)),
  dragTorque: 0.8,
});
const steps = [2, 4, 6, 8, 10, 12, 14];

describe('zeroFromTorque', () => {
  it('agrees with mill A worked at 40 digits', () => {
    const found = zeroFromTorque(millA);
    expect(found.zero).toBeCloseTo(-4.7453464786863234e-5, 14);
    expect(found.standardUncertainty).toBeCloseTo(1.579214241667696e-5, 14);
    expect(found.low).toBeCloseTo(-7.351773013424317e-5, 14);
    expect(found.high).toBeCloseTo(-1.3372198950668297e-5, 14);
    expect(found.elongation).toBeCloseTo(208.02e-6, 8);
    expect(found.elongationLow).toBeCloseTo(171.69e-6, 8);
    expect(found.elongationHigh).toBeCloseTo(237.4e-6, 7);
    expect(found.probabilityNoToe).toBeCloseTo(0.00173, 5);
    expect(found.warnings).toEqual([]);
  });
  it('carries a straight part back to no load, as ASTM D638 annex A1 does', () => {
    const { zero, elongation } = zeroFromTorque(straight(steps, 20e-6));
    expect(zero).toBeCloseTo(30e-6, 8);
    expect(elongation).toBeCloseTo(20e-6 * 13.2, 8);
  });
  it('moves with the dial: a shift of all readings shifts the zero and nothing else', () => {
    const shifted = { ...millA, readings: millA.readings.map((reading) => reading + 1e-3) };
    expect(zeroFromTorque(shifted).zero).toBeCloseTo(zeroFromTorque(millA).zero + 1e-3, 12);
    expect(zeroFromTorque(shifted).elongation).toBeCloseTo(zeroFromTorque(millA).elongation, 12);
  });
  it('leaves out readings that only feel the drag', () => {
    const longer = {
      torques: [0.5, ...millA.torques],
      readings: [9e-3, ...millA.readings],
      dragTorque: 0.8,
    };
    const found = zeroFromTorque(longer);
    expect(found.kept).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(found.zero).toBe(zeroFromTorque(millA).zero);
    expect(found.toe).toHaveLength(10);
  });
  it('is less sure where the torques scatter or the readings repeat badly', () => {
    const plain = zeroFromTorque(millA).standardUncertainty;
    const torqueScatter = millA.torques.map((torque) => 0.05 * torque);
    expect(zeroFromTorque({ ...millA, torqueScatter }).standardUncertainty).toBeGreaterThan(plain);
    const shaky = zeroFromTorque({ ...millA, repeatability: 20e-6 });
    expect(shaky.standardUncertainty).toBeGreaterThan(plain);
  });
  it('counts a torque unsure by 0.25 N·m by the slope, by hand', () => {
    // 20 µm per N·m: 0.25 N·m are 5 µm, as much as the repeatability, so the variance becomes 2.
    const series = straight(steps, 20e-6);
    const found = zeroFromTorque({ ...series, torqueScatter: [0, 0, 0.25, 0, 0, 0, 0] });
    const fits = envelopeFits({
      loads: steps.map((torque) => (torque - 0.8) / 13.2),
      readings: series.readings,
      repeatability: 5e-6,
      variances: [1, 1, 2, 1, 1, 1, 1],
    });
    const { zeros, elongation } = envelopeEstimate(fits, 0.95);
    expect(found.standardUncertainty).toBeCloseTo(zeros[0]?.deviation ?? 0, 15);
    expect(found.sdElongation).toBeCloseTo(elongation.deviation, 15);
    expect(zeroFromTorque(series).sdElongation).not.toBeCloseTo(elongation.deviation, 8);
  });
  it('does not ask for the unit of the load', () => {
    const inUnits = (factor: number) => ({
      torques: millA.torques.map((torque) => factor * torque),
      readings: millA.readings,
      dragTorque: factor * millA.dragTorque,
      torqueScatter: millA.torques.map((torque) => factor * 0.05 * torque),
    });
    const plain = zeroFromTorque(inUnits(1));
    const other = zeroFromTorque(inUnits(1e5));
    expect(other.zero).toBeCloseTo(plain.zero, 14);
    expect(other.sdElongation).toBeCloseTo(plain.sdElongation, 14);
  });
  it.each([-5e-6, 0])('warns of readings that do not rise: %s m per N·m', (perTorque) => {
    const { torques, readings } = straight(steps, perTorque);
    const moved = readings.map((reading) => reading - 30e-6);
    expect(zeroFromTorque({ torques, readings: moved, dragTorque: 0.8 }).warnings).toContain(
      'doesNotRise',
    );
  });
  it.each([
    [2.5e-6, 'wideInterval'],
    [1e-6, 'tooWideForStress'],
  ])('warns when %s m per N·m leaves the zero too unsure: %s', (perTorque, warning) =>
    expect(zeroFromTorque(straight(steps, perTorque)).warnings).toEqual([warning]),
  );
  it('warns of readings that never go straight', () => {
    const sagging = straight([2, 3, 4, 5, 6, 8, 10, 12, 14, 16], 20e-6);
    const readings = sagging.readings.map(
      (reading, i) => reading + 600e-6 / (sagging.torques[i] as number),
    );
    expect(zeroFromTorque({ ...sagging, readings }).warnings).toContain('neverStraight');
  });
  it('refuses too few readings and a repeatability of 0', () => {
    expect(() => zeroFromTorque(straight([2, 6, 8, 10, 12], 2e-5))).toThrow(
      'number of readings above the drag torque must be at least 6 (was 5)',
    );
    expect(() => zeroFromTorque({ ...millA, repeatability: 0 })).toThrow(
      'repeatability must be above 0 m (was 0)',
    );
    expect(() => zeroFromTorque({ ...millA, torqueScatter: [1] })).toThrow(
      'number of torqueScatter must be 10 (was 1)',
    );
    const torqueScatter = millA.torques.map((_, i) => (i === 2 ? Number.NaN : 0));
    expect(() => zeroFromTorque({ ...millA, torqueScatter })).toThrow(
      'torqueScatter[2] must be a finite number of N·m (was NaN)',
    );
  });
});

describe('zeroByUpperHalf', () => {
  it('answers a constructed toe exactly straight from 30 µm on (method of ASTM D638, A1)', () => {
    const found = zeroByUpperHalf({
      torques: [0, 50, 180, 400, 700, 1000, 1300, 1600, 1900], // any load will do
      readings: micro([0, 10, 20, 30, 40, 50, 60, 70, 80]),
      dragTorque: 0,
    });
    expect(found.zero).toBeCloseTo(16.6666666666667e-6, 17);
    expect(found.elongation).toBeCloseTo(63.3333333333333e-6, 17);
    expect(found.fitted).toEqual([5, 6, 7, 8]);
  });
  it('takes the half at the highest torques whatever the order, at least 4', () => {
    const mixed = straight([14, 2, 12, 4, 10], 20e-6);
    expect(zeroByUpperHalf(mixed).fitted).toEqual([3, 4, 2, 0]);
    expect(zeroByUpperHalf(millA).fitted).toEqual([5, 6, 7, 8, 9]);
  });
  it('gives zero ± t·s·√(1/n + x̄²/Sxx)', () => {
    const { zero, low, high, standardUncertainty, degreesOfFreedom } = zeroByUpperHalf(millA);
    expect(degreesOfFreedom).toBe(3);
    expect(high - zero).toBeCloseTo(3.182446305 * standardUncertainty, 12); // GUM table G.2: 3.18
    expect(zero - low).toBeCloseTo(high - zero, 15);
  });
  it('refuses fewer than 4 readings above the drag', () =>
    expect(() => zeroByUpperHalf(straight([0.5, 2, 4, 6], 2e-5))).toThrow(
      'number of readings above the drag torque must be at least 4 (was 3)',
    ));
});

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
