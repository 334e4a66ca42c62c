/**
 * A straight line through readings that start in a toe of unknown shape: the toe is any smooth
 * curve inside an envelope that dies with load, of 31 sorts, each fitted and weighed by evidence.
 * Units: load as a share of the top load; readings and what follows from them in m.
 * Source: Gaussian-process regression with explicit basis functions, Rasmussen and Williams (2006),
 * 2.7, from memory; the family of envelopes is derived here and tested by simulation.
 */
import { decompose, inner, logDeterminant, solveLower, solveUpper } from '../statistics/matrix.ts';

const LENGTHS = [0.03, 0.05, 0.08, 0.13, 0.2, 0.3]; // share of the top load over which a toe dies
const HEIGHTS = [1, 3, 10, 30, 100]; // height of a toe in repeatabilities
const NO_TOE = { length: 1, height: 0 }; // without height the length is idle
const PRIOR_NO_TOE = 0.15;
const PRIOR_DEGREES_OF_FREEDOM = 2; // worth of the repeatability, against that of the residuals
const STRETCHED = 1.5; // the envelope and the correlation reach this many lengths

/** Readings against load; all lists (n). `variances` are in squares of the repeatability. */
export interface EnvelopeData {
  readonly loads: readonly number[]; // share of the top load
  readonly readings: readonly number[]; // m
  readonly repeatability: number; // m, > 0
  readonly variances: readonly number[];
}

/** One sort of toe with its line; the parameters follow Student's distribution about their values. */
export interface EnvelopeFit {
  readonly length: number; // share of the top load
  readonly height: number; // in repeatabilities; 0 without a toe
  readonly weight: number; // all weights add up to 1
  readonly zero: number; // m, at no load
  readonly scaleZero: number; // m
  readonly elongation: number; // m, from no load to the top load
  readonly scaleElongation: number; // m
  readonly degreesOfFreedom: number;
  readonly toe: Float64Array; // m, one for each reading
}

function covariance(data: EnvelopeData, length: number, height: number): Float64Array {
  const { loads, variances } = data;
  const size = loads.length;
  const reach = STRETCHED * length;
  const edges = loads.map((load) => height * (1 + load / reach) ** -3);
  const matrix = new Float64Array(size * size);
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j < i; j += 1) {
      const distance = ((loads[i] as number) - (loads[j] as number)) / reach;
      matrix[i * size + j] =
        (edges[i] as number) * (edges[j] as number) * Math.exp(-0.5 * distance * distance);
    }
    matrix[i * size + i] = (edges[i] as number) ** 2 + (variances[i] as number);
  }
  return matrix;
}

/** Generalised least squares with V = L·Lᵀ; `rest` is L⁻¹·(y − X·θ). */
function generalisedLine({ loads, readings }: EnvelopeData, triangle: Float64Array) {
  const ones = solveLower(triangle, new Float64Array(loads.length).fill(1));
  const x = solveLower(triangle, loads);
  const y = solveLower(triangle, readings);
  const [b00, b01, b11] = [inner(ones, ones), inner(ones, x), inner(x, x)];
  const [r0, r1] = [inner(ones, y), inner(x, y)];
  const determinant = b00 * b11 - b01 * b01;
  const zero = (b11 * r0 - b01 * r1) / determinant;
  const elongation = (b00 * r1 - b01 * r0) / determinant;
  const rest = y.map((v, i) => v - zero * (ones[i] as number) - elongation * (x[i] as number));
  return { b00, b11, determinant, zero, elongation, rest };
}

/** The line under one sort of toe; `weight` is still the logarithm of the evidence. */
function fitUnder(data: EnvelopeData, length: number, height: number, prior: number): EnvelopeFit {
  const size = data.loads.length;
  const triangle = covariance(data, length, height);
  decompose(triangle, size);
  const line = generalisedLine(data, triangle);
  const { zero, elongation, determinant, rest } = line;
  const degreesOfFreedom = PRIOR_DEGREES_OF_FREEDOM + size - 2;
  const squares = PRIOR_DEGREES_OF_FREEDOM * data.repeatability ** 2 + inner(rest, rest);
  const variance = squares / degreesOfFreedom / determinant;
  const spread = logDeterminant(triangle, size) + Math.log(determinant);
  return {
    length,
    height,
    weight: Math.log(prior) - spread / 2 - (degreesOfFreedom / 2) * Math.log(squares),
    zero,
    scaleZero: Math.sqrt(variance * line.b11),
    elongation,
    scaleElongation: Math.sqrt(variance * line.b00),
    degreesOfFreedom,
    toe: toeUnder(data, zero, elongation, solveUpper(triangle, rest)),
  };
}

/** K·V⁻¹·(y − X·θ), written as the residual less the noise's share of it, diag(v)·V⁻¹·(y − X·θ). */
function toeUnder(
  data: EnvelopeData,
  zero: number,
  elongation: number,
  pulls: Float64Array,
): Float64Array {
  return pulls.map((pull, i) => {
    const residual = (data.readings[i] as number) - zero - elongation * (data.loads[i] as number);
    return residual - (data.variances[i] as number) * pull;
  });
}

/** The line under each of the 31 sorts of toe, with its weight; the first is without a toe. */
export function envelopeFits(data: EnvelopeData): readonly EnvelopeFit[] {
  const share = (1 - PRIOR_NO_TOE) / (LENGTHS.length * HEIGHTS.length);
  const withToe = LENGTHS.flatMap((length) =>
    HEIGHTS.map((height) => fitUnder(data, length, height, share)),
  );
  const fits = [fitUnder(data, NO_TOE.length, NO_TOE.height, PRIOR_NO_TOE), ...withToe];
  const best = Math.max(...fits.map((fit) => fit.weight));
  const total = fits.reduce((sum, fit) => sum + Math.exp(fit.weight - best), 0);
  return fits.map((fit) => ({ ...fit, weight: Math.exp(fit.weight - best) / total }));
}
