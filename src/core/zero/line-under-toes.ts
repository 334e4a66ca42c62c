/**
 * Straight lines through readings under toes of one length and height, by generalised least squares.
 * Units: readings in m; variances in squares of the repeatability.
 * Source: Gaussian-process regression with explicit basis functions, Rasmussen and Williams (2006),
 * 2.7, from memory.
 */
import { decompose, inner, logDeterminant, solveLower, solveUpper } from '../statistics/matrix.ts';
import { type ToeVariances, toeCovariance } from './toe-covariance.ts';
import type { Lists, Toes } from './toes.ts';

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

/** The lists, or what the toes take from them. */
type Lines = Pick<Lists, 'design' | 'readings'>;

const nothingKnown: KnownElongation = { elongation: 0, weight: 0 };

/** The triangle of the information matrix of the parameters, and the pull of the readings on them. */
function informationOf(lists: Lines, lower: Lines, known: KnownElongation) {
  const size = lists.design.length;
  const last = size - 1;
  const row = (i: number, list: Float64Array, low: Float64Array) =>
    inner(lists.design[i] as Float64Array, list) - inner(lower.design[i] as Float64Array, low);
  const triangle = new Float64Array(size * size);
  for (let i = 0; i < size; i += 1) {
    for (const [j, column] of lists.design.slice(0, i + 1).entries())
      triangle[i * size + j] = row(i, column, lower.design[j] as Float64Array);
  }
  const pull = Float64Array.from(lists.design, (_, i) => row(i, lists.readings, lower.readings));
  triangle[last * size + last] = (triangle[last * size + last] as number) + known.weight;
  pull[last] = (pull[last] as number) + known.weight * known.elongation;
  decompose(triangle, size);
  return { triangle, pull };
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
function restOf(
  readings: Float64Array,
  design: readonly Float64Array[],
  parameters: Float64Array,
): Float64Array {
  const rest = Float64Array.from(readings);
  for (const [k, column] of design.entries()) {
    const parameter = parameters[k] as number;
    for (let i = 0; i < rest.length; i += 1)
      rest[i] = (rest[i] as number) - parameter * (column[i] as number);
  }
  return rest;
}

/** The mean toe as a sum of columns, m. */
function meanToe({ ones }: Lists, { columns, series }: Toes, pulls: readonly Float64Array[]) {
  const toe = new Float64Array(ones.length);
  for (const [k, column] of columns.entries()) {
    const each = pulls.map((pull) => pull[k] as number);
    for (let i = 0; i < toe.length; i += 1)
      toe[i] = (toe[i] as number) + (each[series[i] as number] as number) * (column[i] as number);
  }
  for (let i = 0; i < toe.length; i += 1) toe[i] = (toe[i] as number) / (ones[i] as number);
  return toe;
}

/** The lines through the lists under toes of given variances; without any, plain least squares. */
export function lineUnderToes(
  lists: Lists,
  toes: Toes,
  variances: ToeVariances,
  known: KnownElongation = nothingKnown,
): LineUnderToes {
  const { design, readings } = toes.shares;
  const covariance = toeCovariance(toes.products, toes.columns.length, variances);
  const lower = { design: design.map(covariance.lower), readings: covariance.lower(readings) };
  const size = design.length;
  const { triangle, pull } = informationOf(lists, lower, known);
  const parameters = solveUpper(triangle, solveLower(triangle, pull));
  const rest = restOf(lists.readings, lists.design, parameters);
  const low = restOf(lower.readings, lower.design, parameters);
  const off = known.elongation - (parameters[size - 1] as number);
  const pulls = covariance.pulls(
    readings.map((share, s) =>
      restOf(
        share,
        design.map((column) => column[s] as Float64Array),
        parameters,
      ),
    ),
  );
  return {
    parameters,
    variances: inverseDiagonal(triangle, size),
    squares: inner(rest, rest) - inner(low, low) + known.weight * off * off,
    logInformation: logDeterminant(triangle, size),
    logDeterminant: covariance.logDeterminant,
    toe: meanToe(lists, toes, pulls),
  };
}
