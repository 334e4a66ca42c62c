/**
 * Straight lines through readings under toes of one length and height, by generalised least squares.
 * Units: readings in m; variances in squares of the repeatability.
 * Source: Gaussian-process regression with explicit basis functions, Rasmussen and Williams (2006),
 * 2.7, from memory.
 */
import { decompose, inner, logDeterminant, solveLower, solveUpper } from '../statistics/matrix.ts';
import { type ToeVariances, toeCovariance } from './toe-covariance.ts';
import type { Design, Toes } from './toes.ts';

/** What is known of the elongation from elsewhere, before any reading. */
export interface KnownElongation {
  readonly elongation: number; // m
  readonly weight: number; // one over its variance in squares of the repeatability
}

/** The lines y = zero + elongation·load, with one zero for each series. */
export interface LineUnderToes {
  readonly parameters: Float64Array; // the zeros, then the elongation
  readonly variances: Float64Array; // of the parameters
  readonly squares: number; // of what is left, over its covariance
  readonly logInformation: number; // ln of the determinant of the information matrix
  readonly logDeterminant: number; // of the covariance of the lists
  readonly toe: Float64Array; // m, one for each reading
}

/** Lists, or what the toes take from them. */
type Lists = readonly Float64Array[];

const nothingKnown: KnownElongation = { elongation: 0, weight: 0 };

/** The products of a list with each column of the design, over the covariance. */
function pullOn(design: Lists, lowDesign: Lists, list: Float64Array, low: Float64Array) {
  return Float64Array.from(
    design,
    (column, i) => inner(column, list) - inner(lowDesign[i] as Float64Array, low),
  );
}

/** The triangle of the information matrix of the parameters. */
function informationOf(design: Lists, low: Lists, known: KnownElongation): Float64Array {
  const size = design.length;
  const triangle = new Float64Array(size * size);
  for (const [i, column] of design.entries())
    triangle.set(pullOn(design, low, column, low[i] as Float64Array), i * size);
  triangle[size * size - 1] = (triangle[size * size - 1] as number) + known.weight;
  decompose(triangle, size);
  return triangle;
}

/** The diagonal of the inverse of A = L·Lᵀ. */
function inverseDiagonal(triangle: Float64Array, size: number): Float64Array {
  return Float64Array.from({ length: size }, (_, i) => {
    const unit = new Float64Array(size);
    unit[i] = 1;
    const solved = solveLower(triangle, unit);
    return inner(solved, solved);
  });
}

/** The readings less the lines through them. */
function restOf(readings: Float64Array, design: Lists, parameters: Float64Array): Float64Array {
  const rest = Float64Array.from(readings);
  for (const [k, column] of design.entries()) {
    const parameter = parameters[k] as number;
    for (let i = 0; i < rest.length; i += 1)
      rest[i] = (rest[i] as number) - parameter * (column[i] as number);
  }
  return rest;
}

/** The mean toe as a sum of columns, m. */
function meanToe({ ones }: Design, { columns, series }: Toes, pulls: Lists): Float64Array {
  const toe = new Float64Array(ones.length);
  for (const [k, column] of columns.entries()) {
    const each = pulls.map((pull) => pull[k] as number);
    for (let i = 0; i < toe.length; i += 1)
      toe[i] = (toe[i] as number) + (each[series[i] as number] as number) * (column[i] as number);
  }
  for (let i = 0; i < toe.length; i += 1) toe[i] = (toe[i] as number) / (ones[i] as number);
  return toe;
}

/** Lays lines through readings over their standard deviations; `shares` are what the toes' columns make of them. */
export type LineFitter = (readings: Float64Array, shares: Lists) => LineUnderToes;

/**
 * What lays lines under toes of given variances, or plain least squares without any: all that does
 * not hang on the readings is worked out once.
 */
export function lineUnderToes(
  lists: Design,
  toes: Toes,
  variances: ToeVariances,
  known: KnownElongation = nothingKnown,
): LineFitter {
  const { design } = lists;
  const size = design.length;
  const covariance = toeCovariance(toes.products, toes.columns.length, variances);
  const designShares = design.map(toes.sharesOf);
  const lowDesign = designShares.map(covariance.lower);
  const triangle = informationOf(design, lowDesign, known);
  const fixed = {
    variances: inverseDiagonal(triangle, size),
    logInformation: logDeterminant(triangle, size),
    logDeterminant: covariance.logDeterminant,
  };
  const bySeries = toes.products.map((_, s) =>
    designShares.map((column) => column[s] as Float64Array),
  );
  return (readings, shares) => {
    const lower = covariance.lower(shares);
    const pull = pullOn(design, lowDesign, readings, lower);
    pull[size - 1] = (pull[size - 1] as number) + known.weight * known.elongation;
    const parameters = solveUpper(triangle, solveLower(triangle, pull));
    const rest = restOf(readings, design, parameters);
    const low = restOf(lower, lowDesign, parameters);
    const off = known.elongation - (parameters[size - 1] as number);
    const left = shares.map((share, s) => restOf(share, bySeries[s] as Lists, parameters));
    return {
      ...fixed,
      parameters,
      squares: inner(rest, rest) - inner(low, low) + known.weight * off * off,
      toe: meanToe(lists, toes, covariance.pulls(left)),
    };
  };
}
