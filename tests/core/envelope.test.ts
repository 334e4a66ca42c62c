import { describe, expect, it } from 'vitest';
import { type EnvelopeData, envelopeFits } from '../../src/core/envelope.ts';
import { fitLine } from '../../src/core/line.ts';

const loads = [0.05, 0.15, 0.3, 0.45, 0.6, 0.8, 1];
const noise = [2e-6, -3e-6, 1e-6, 0, -2e-6, 3e-6, -1e-6];
const straight = loads.map((load, i) => 20e-6 + 300e-6 * load + (noise[i] as number));
const data: EnvelopeData = {
  loads,
  readings: straight,
  repeatability: 5e-6,
  variances: loads.map(() => 1),
};

describe('envelopeFits', () => {
  it('are 31, with weights that add up to 1, the first without a toe', () => {
    const fits = envelopeFits(data);
    const [plain] = fits;
    expect(fits).toHaveLength(31);
    expect(fits.reduce((sum, fit) => sum + fit.weight, 0)).toBeCloseTo(1, 14);
    expect(plain?.height).toBe(0);
    for (const toe of plain?.toe ?? []) expect(toe).toBeCloseTo(0, 18);
  });
  it('without a toe is least squares, scaled by residuals and repeatability together', () => {
    const [plain] = envelopeFits(data);
    const line = fitLine(loads, straight);
    expect(plain?.zero).toBeCloseTo(line.intercept, 15);
    expect(plain?.elongation).toBeCloseTo(line.slope, 15);
    const variance = (2 * 25e-12 + 5 * line.residualSd ** 2) / 7;
    const widening = Math.sqrt(variance) / line.residualSd;
    expect((plain?.scaleZero ?? 0) / line.sdIntercept).toBeCloseTo(widening, 9);
    expect((plain?.scaleElongation ?? 0) / line.sdSlope).toBeCloseTo(widening, 9);
    expect(plain?.degreesOfFreedom).toBe(7);
  });
  it('moves with the readings and turns with the slope (generalised least squares)', () => {
    const moved = envelopeFits({
      ...data,
      readings: straight.map((reading, i) => reading + 1e-4 + 2e-4 * (loads[i] as number)),
    });
    for (const [i, fit] of envelopeFits(data).entries()) {
      expect(moved[i]?.zero).toBeCloseTo(fit.zero + 1e-4, 12);
      expect(moved[i]?.elongation).toBeCloseTo(fit.elongation + 2e-4, 12);
      expect(moved[i]?.weight).toBeCloseTo(fit.weight, 8);
    }
  });
  it('put a toe of 100 µm that dies early where it is, and believe in it', () => {
    const toe = loads.map((load) => 100e-6 * Math.exp(-load / 0.06));
    const bent = envelopeFits({
      ...data,
      readings: straight.map((r, i) => r + (toe[i] as number)),
    });
    expect(bent[0]?.weight).toBeLessThan(0.01);
    const best = bent.reduce((a, b) => (b.weight > a.weight ? b : a));
    expect(best.toe[0]).toBeCloseTo(toe[0] as number, 5);
    expect(Math.abs(best.toe[6] as number)).toBeLessThan(1e-6);
  });
  it('trust a reading less where its variance is larger', () => {
    const off = straight.map((reading, i) => reading + (i === 6 ? 40e-6 : 0));
    const doubted = loads.map((_, i) => (i === 6 ? 1e6 : 1));
    const [trusting] = envelopeFits({ ...data, readings: off });
    const [doubting] = envelopeFits({ ...data, readings: off, variances: doubted });
    const without = fitLine(loads.slice(0, 6), straight.slice(0, 6));
    expect(doubting?.zero).toBeCloseTo(without.intercept, 9);
    expect(Math.abs((trusting?.zero ?? 0) - without.intercept)).toBeGreaterThan(5e-6);
  });
});
