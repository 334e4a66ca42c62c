/**
 * Several results of one quantity joined, each by its own uncertainty.
 * Units: values and uncertainties share one unit; the ratio has none.
 * Source: weighted mean as in JCGM 100:2008 (GUM) F.1.1 and the ratio of R. T. Birge, Phys. Rev. 40 (1932), both from memory.
 */
import { assertAtLeast, assertFinite, assertPositive } from '../assert.ts';
import { sum } from './moments.ts';

/** One result with its standard uncertainty. */
export interface UncertainResult {
  readonly value: number;
  readonly standard: number; // same unit, above 0
}

/** What several results come to together. */
export interface WeightedMean {
  readonly value: number;
  readonly standardUncertainty: number; // same unit; from the uncertainties alone
  readonly birgeRatio: number; // 1 where the uncertainties explain the spread; above, they do not
}

/** The mean and the weight of all together; at least one result. */
export function centreOf(results: readonly UncertainResult[]): { value: number; weight: number } {
  const weight = sum(results.map(({ standard }) => standard ** -2));
  const value = sum(results.map(({ value, standard }) => value * standard ** -2)) / weight;
  return { value, weight };
}

/**
 * x̄ = Σ(x/u²)/Σ(1/u²), u(x̄) = 1/√Σ(1/u²), ratio √(Σ((x − x̄)/u)²/(n − 1)).
 * @throws RangeError with fewer than 2 results, a value that is not finite, or an uncertainty that is not above 0
 */
export function weightedMean(results: readonly UncertainResult[]): WeightedMean {
  assertAtLeast('number of results', results.length, 2);
  for (const [place, { value, standard }] of results.entries()) {
    assertFinite(`result ${place + 1}`, value);
    assertPositive(`uncertainty ${place + 1}`, standard);
  }
  const { value: centre, weight } = centreOf(results);
  const squares = results.map(({ value, standard }) => ((value - centre) / standard) ** 2);
  return {
    value: centre,
    standardUncertainty: weight ** -0.5,
    birgeRatio: Math.sqrt(sum(squares) / (results.length - 1)),
  };
}
