/**
 * How far the results of several people differ, and whether their own uncertainties explain it.
 * Units: values and uncertainties share one unit; ratio and limit have none.
 * Source: R. T. Birge, Phys. Rev. 40 (1932), from memory, for the ratio; E. B. Wilson and M. M. Hilferty, PNAS 17
 * (1931), from memory, for the quantile of chi-squared, within 1 % of tables (one degree of freedom: 4 %); Bonferroni’s share of the
 * confidence for the furthest of many.
 */
import { tQuantile } from '../student.ts';
import { mean, standardDeviation } from '../summary.ts';
import { centreOf, type UncertainResult, weightedMean } from './weighted-mean.ts';

const CONFIDENCE = 0.975; // for each of two limits: of classes without mistakes, one in twenty passes either

/** One person's result, with the standard uncertainty of what that person alone did. */
export type OwnResult = UncertainResult;

/** The spread of several results. */
export interface Spread {
  readonly mean: number;
  readonly standardDeviation: number; // observed
  readonly expected: number; // standard deviation that the uncertainties alone give: their root mean square
  readonly ratio: number; // Birge's: 1 where the uncertainties explain the spread
  readonly limit: number; // of the ratio, passed by chance in 2.5 % of classes
  readonly furthest: number; // place of the result that is furthest from all others together
  readonly isExplained: boolean; // by the uncertainties: neither the ratio nor the furthest one is beyond its limit
}

const NORMAL = Number.POSITIVE_INFINITY; // degrees of freedom

/** The largest ratio that chance explains, √(χ²/ν) at 95 %, with ν degrees of freedom. */
function largestByChance(degreesOfFreedom: number): number {
  const variance = 2 / (9 * degreesOfFreedom);
  const cubeRoot = 1 - variance + tQuantile(CONFIDENCE, NORMAL) * Math.sqrt(variance);
  return cubeRoot ** 1.5;
}

/** The largest distance, in standard uncertainties, that chance explains for the furthest of so many. */
const largestOf = (count: number): number => tQuantile(1 - (1 - CONFIDENCE) / (2 * count), NORMAL);

/** How far each is from all others together, in the standard uncertainty of that distance; at least 0. */
function distances(results: readonly OwnResult[]): readonly number[] {
  return results.map(({ value, standard }, at) => {
    const others = centreOf(results.filter((_, place) => place !== at));
    return Math.abs(value - others.value) / Math.hypot(standard, others.weight ** -0.5);
  });
}

/**
 * The spread of at least two results; the ratio is √(Σ((x − x̄_w)/u)²/(n − 1)) about the weighted mean.
 * @throws RangeError with fewer than 2, a value that is not finite, or an uncertainty that is not above 0
 */
export function spreadOf(results: readonly OwnResult[]): Spread {
  const { birgeRatio: ratio } = weightedMean(results);
  const values = results.map(({ value }) => value);
  const average = mean(values);
  const limit = largestByChance(results.length - 1);
  const away = distances(results);
  const most = Math.max(...away);
  return {
    mean: average,
    standardDeviation: standardDeviation(values),
    expected: Math.sqrt(mean(results.map(({ standard }) => standard ** 2))),
    ratio,
    limit,
    furthest: away.indexOf(most),
    isExplained: ratio <= limit && most <= largestOf(results.length),
  };
}
