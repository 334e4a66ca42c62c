/**
 * How far two results differ, counted in their own uncertainties.
 * Units: values and uncertainties share one unit; the scores have none.
 * Source: ISO/IEC 17043 annex B and ISO 13528 (E_n number, zeta score), from memory; checked
 * against the worked output of the NIST Dataplot reference manual, En scores.
 */
import { assertAtLeast, assertFinite } from './assert.ts';

export { type OwnResult, type Spread, spreadOf } from './statistics/spread.ts';
export { type WeightedMean, weightedMean } from './statistics/weighted-mean.ts';

/** A value with its expanded uncertainty U = k·u. */
export interface ExpandedResult {
  readonly value: number;
  readonly expanded: number; // same unit, at least 0
}

/** A value with its standard uncertainty u. */
export interface StandardResult {
  readonly value: number;
  readonly standard: number; // same unit, at least 0
}

function score(difference: number, first: number, second: number): number {
  assertFinite('difference of the values', difference);
  assertAtLeast('first uncertainty', first, 0);
  assertAtLeast('second uncertainty', second, 0);
  assertAtLeast('both uncertainties together', Math.hypot(first, second), Number.MIN_VALUE);
  return difference / Math.hypot(first, second);
}

/**
 * E_n = (x₁ − x₂)/√(U₁² + U₂²), no unit; from −1 to 1 the two agree. Positive if the first is larger.
 * @throws RangeError unless values are finite, uncertainties at least 0 and not both 0
 */
export function agreementNumber(first: ExpandedResult, second: ExpandedResult): number {
  return score(first.value - second.value, first.expanded, second.expanded);
}

/**
 * ζ = (x₁ − x₂)/√(u₁² + u₂²), no unit; from −2 to 2 the two agree. Positive if the first is larger.
 * @throws RangeError unless values are finite, uncertainties at least 0 and not both 0
 */
export function zetaScore(first: StandardResult, second: StandardResult): number {
  return score(first.value - second.value, first.standard, second.standard);
}
