import { determinant, inverse, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { fitLine } from '../../../src/core/line.ts';
import {
  type EnvelopeData,
  type EnvelopeFit,
  envelopeFits,
} from '../../../src/core/zero/envelope.ts';

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
    expect(plain?.zeros[0]).toBeCloseTo(line.intercept, 15);
    expect(plain?.elongation).toBeCloseTo(line.slope, 15);
    const variance = (2 * 25e-12 + 5 * line.residualSd ** 2) / 7;
    const widening = Math.sqrt(variance) / line.residualSd;
    expect((plain?.scaleZeros[0] ?? 0) / line.sdIntercept).toBeCloseTo(widening, 9);
    expect((plain?.scaleElongation ?? 0) / line.sdSlope).toBeCloseTo(widening, 9);
    expect(plain?.degreesOfFreedom).toBe(7);
  });
  it('moves with the readings and turns with the slope (generalised least squares)', () => {
    const moved = envelopeFits({
      ...data,
      readings: straight.map((reading, i) => reading + 1e-4 + 2e-4 * (loads[i] as number)),
    });
    for (const [i, fit] of envelopeFits(data).entries()) {
      expect(moved[i]?.zeros[0]).toBeCloseTo((fit.zeros[0] ?? 0) + 1e-4, 12);
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
    expect(doubting?.zeros[0]).toBeCloseTo(without.intercept, 9);
    expect(Math.abs((trusting?.zeros[0] ?? 0) - without.intercept)).toBeGreaterThan(5e-6);
  });
});

// The same regression written with whole matrices, inverted outright by other code: the covariance
// K + diag(v), K = h²·(1 + x/r)⁻³·(1 + x′/r)⁻³·exp(−(x − x′)²/2r²) with r = 1.5 lengths, and the
// evidence |V|^−½·|XᵀV⁻¹X|^−½·(2s² + rᵀV⁻¹r)^−n/2 with the prior of the sort of toe.
describe('envelopeFits beside whole matrices', () => {
  const variances = [1, 1.5, 1, 2, 1, 1, 3];
  const bent = straight.map((r, i) => r + 40e-6 * Math.exp(-(loads[i] as number) / 0.1));
  const fits = envelopeFits({ ...data, readings: bent, variances });
  const whole = fits.map(({ length, height }) => {
    const reach = 1.5 * length;
    const edge = (load: number) => height * (1 + load / reach) ** -3;
    const toe = new Matrix(
      loads.map((a) =>
        loads.map((b) => edge(a) * edge(b) * Math.exp(-((a - b) ** 2) / (2 * reach ** 2))),
      ),
    );
    const v = Matrix.add(toe, Matrix.diag(variances));
    const design = new Matrix(loads.map((load) => [1, load]));
    const y = Matrix.columnVector(bent);
    const pull = design.transpose().mmul(inverse(v));
    const information = pull.mmul(design);
    const line = inverse(information).mmul(pull).mmul(y);
    const rest = Matrix.sub(y, design.mmul(line));
    const solved = inverse(v).mmul(rest);
    const squares = 2 * 5e-6 ** 2 + rest.dot(solved);
    const prior = height === 0 ? 0.15 : 0.85 / 30;
    const evidence =
      (prior * (squares / 1e-9) ** -3.5) / Math.sqrt(determinant(v) * determinant(information));
    const spread = inverse(information).mul(squares / 7);
    return { line, spread, toe: toe.mmul(solved), evidence };
  });
  const total = whole.reduce((sum, { evidence }) => sum + evidence, 0);

  it('weighs and fits all sorts as they do', () => {
    for (const [i, other] of whole.entries()) {
      const fit = fits[i] as EnvelopeFit;
      expect(fit.weight / (other.evidence / total)).toBeCloseTo(1, 8);
      expect(fit.zeros[0]).toBeCloseTo(other.line.get(0, 0), 12);
      expect(fit.elongation).toBeCloseTo(other.line.get(1, 0), 12);
      expect((fit.scaleZeros[0] ?? 0) / Math.sqrt(other.spread.get(0, 0))).toBeCloseTo(1, 8);
      expect(fit.scaleElongation / Math.sqrt(other.spread.get(1, 1))).toBeCloseTo(1, 8);
      expect([...fit.toe].map((value, k) => value - other.toe.get(k, 0))).toEqual(
        loads.map(() => expect.closeTo(0, 12)),
      );
    }
  });
});
