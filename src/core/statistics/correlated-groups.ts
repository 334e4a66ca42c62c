/**
 * The combined variance of a budget, in groups of inputs that are correlated with each other.
 * Units: squares of the result's unit.
 * Source: JCGM 100:2008 (GUM) 5.2 and G.4, from memory. The source gives no effective degrees of
 * freedom for correlated inputs; derived here: such inputs come from one evaluation, so a group
 * counts as one, with the fewest degrees of freedom of its members (exact if they share them).
 */
import { assertAtLeast, assertBetween } from '../assert.ts';

const ROUNDING = 1e-12; // share of the summed variances that rounding may leave

/** Correlation of two inputs, −1 to 1. */
export type Correlation<Name extends string> = readonly [Name, Name, number];

/** What one input adds to the result. */
export interface Share {
  readonly signed: number; // ∂y/∂x·u(x), unit of the result
  readonly degreesOfFreedom: number;
}

/** The combined variance and its effective degrees of freedom. */
export interface CombinedVariance {
  readonly variance: number;
  readonly degreesOfFreedom: number; // Infinity if nothing limits it
}

function groupsOf<Name extends string>(
  names: readonly Name[],
  correlations: readonly Correlation<Name>[],
): readonly (readonly Name[])[] {
  const groups = new Map<Name, Name[]>(names.map((name) => [name, [name]]));
  for (const [first, second] of correlations) {
    const [one, other] = [groups.get(first), groups.get(second)];
    if (!one || !other)
      throw new RangeError(`correlation must be of inputs (was ${first}, ${second})`);
    if (one === other) continue;
    one.push(...other);
    for (const name of other) groups.set(name, one);
  }
  return [...new Set(groups.values())];
}

/**
 * u² = Σ cᵢ² + 2 Σ rᵢⱼ·cᵢ·cⱼ and ν = u⁴/Σ(u_g⁴/ν_g) over the groups g.
 * @throws RangeError if a correlation is out of range, names no input, or contradicts the others
 */
export function combinedVariance<Name extends string>(
  shares: ReadonlyMap<Name, Share>,
  correlations: readonly Correlation<Name>[],
): CombinedVariance {
  const share = (name: Name): Share => shares.get(name) as Share;
  const parts = groupsOf([...shares.keys()], correlations).map((group) => {
    const independent = group.reduce((sum, name) => sum + share(name).signed ** 2, 0);
    const shared = correlations
      .filter(([first]) => group.includes(first))
      .reduce((sum, [first, second, coefficient]) => {
        assertBetween(`correlation of ${first} and ${second}`, coefficient, -1, 1);
        return sum + 2 * coefficient * share(first).signed * share(second).signed;
      }, 0);
    assertAtLeast('combined variance', independent + shared, -ROUNDING * independent);
    const degrees = group.map((name) => share(name).degreesOfFreedom);
    return { variance: Math.max(0, independent + shared), degrees: Math.min(...degrees) };
  });
  const variance = parts.reduce((sum, part) => sum + part.variance, 0);
  const limits = parts.map((part) => (part.variance / variance) ** 2 / part.degrees);
  const limit = limits.reduce((sum, part) => sum + part, 0);
  return { variance, degreesOfFreedom: limit > 0 ? 1 / limit : Number.POSITIVE_INFINITY };
}
