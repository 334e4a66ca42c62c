/**
 * How far the results of several people differ, and whether their own uncertainties explain it.
 * Units: values and uncertainties share one unit; ratio and limit have none.
 * Source: R. T. Birge, Phys. Rev. 40 (1932), from memory, for the ratio; E. B. Wilson and M. M. Hilferty, PNAS 17
 * (1931), from memory, for the quantile of chi-squared, within 2 % of tables (one degree of freedom: 3 %).
 */
import { assertAtLeast, assertPositive } from '../assert.ts';
import { tQuantile } from '../student.ts';
import { mean, standardDeviation, sum } from '../summary.ts';

const CONFIDENCE = 0.95; // of a class without mistakes, one in twenty is above the limit

/** One person's result, with the standard uncertainty of what that person alone did. */
export interface OwnResult {
  readonly value: number;
  readonly standard: number; // same unit, above 0
}

/** The spread of several results. */
export interface Spread {
  readonly mean: number;
  readonly standardDeviation: number; // observed
  readonly expected: number; // standard deviation that the uncertainties alone give: their root mean square
  readonly ratio: number; // Birge's: 1 where the uncertainties explain the spread
  readonly limit: number; // of the ratio, passed by chance in 5 % of classes
  readonly furthest: number; // place of the result that adds most to the ratio
}

/** The largest ratio that chance explains, √(χ²/ν) at 95 %, with ν degrees of freedom. */
function largestByChance(degreesOfFreedom: number): number {
  const variance = 2 / (9 * degreesOfFreedom);
  const cubeRoot =
    1 - variance + tQuantile(CONFIDENCE, Number.POSITIVE_INFINITY) * Math.sqrt(variance);
  return cubeRoot ** 1.5;
}

/**
 * The spread of at least two results; the ratio is √(Σ((x − x̄_w)/u)²/(n − 1)) about the weighted mean.
 * @throws RangeError with fewer than 2, a value that is not finite, or an uncertainty that is not above 0
 */
export function spreadOf(results: readonly OwnResult[]): Spread {
  assertAtLeast('number of results', results.length, 2);
  for (const [place, { standard }] of results.entries())
    assertPositive(`uncertainty ${place + 1}`, standard);
  const values = results.map(({ value }) => value);
  const weights = results.map(({ standard }) => standard ** -2);
  const centre = sum(values.map((value, at) => value * (weights[at] as number))) / sum(weights);
  const squares = results.map(({ value, standard }) => ((value - centre) / standard) ** 2);
  return {
    mean: mean(values),
    standardDeviation: standardDeviation(values),
    expected: Math.sqrt(mean(results.map(({ standard }) => standard ** 2))),
    ratio: Math.sqrt(sum(squares) / (results.length - 1)),
    limit: largestByChance(results.length - 1),
    furthest: squares.indexOf(Math.max(...squares)),
  };
}
