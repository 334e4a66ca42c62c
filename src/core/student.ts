/**
 * Student's distribution: probabilities and the factors of coverage taken from it.
 * Units: none (multiples of a standard uncertainty).
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.1, from memory; checked
 * against JCGM 100:2008 (GUM), table G.2.
 */
import { assertBelow, assertFinite, assertPositive } from './assert.ts';
import { rootBetween } from './root.ts';
import { normalUpperTail } from './statistics/normal.ts';
import { incompleteBeta } from './statistics/special.ts';

function assertDegreesOfFreedom(value: number): void {
  if (value !== Number.POSITIVE_INFINITY) assertPositive('degreesOfFreedom', value);
}

/** Probability above t, for t ≥ 0; keeps its digits far out and near the centre alike. */
function upperTail(t: number, degreesOfFreedom: number): number {
  if (degreesOfFreedom === Number.POSITIVE_INFINITY) return normalUpperTail(t);
  const total = degreesOfFreedom + t * t;
  return 0.5 * incompleteBeta(degreesOfFreedom / total, degreesOfFreedom / 2, 0.5, (t * t) / total);
}

/**
 * Probability P(T ≤ t) of Student's distribution, no unit, 0 to 1; `Infinity` degrees of freedom
 * is the normal distribution. @throws RangeError unless t is finite and degreesOfFreedom > 0
 */
export function tCdf(t: number, degreesOfFreedom: number): number {
  assertFinite('t', t);
  assertDegreesOfFreedom(degreesOfFreedom);
  const tail = upperTail(Math.abs(t), degreesOfFreedom);
  return t > 0 ? 1 - tail : tail;
}

/**
 * The t below which lies `probability` (one-sided) of Student's distribution, no unit.
 * @throws RangeError unless 0 < probability < 1 and degreesOfFreedom > 0
 */
export function tQuantile(probability: number, degreesOfFreedom: number): number {
  assertPositive('probability', probability);
  assertBelow('probability', probability, 1);
  assertDegreesOfFreedom(degreesOfFreedom);
  const tail = Math.min(probability, 1 - probability);
  let far = 2;
  while (upperTail(far, degreesOfFreedom) > tail) far *= 2;
  const t = rootBetween((x) => upperTail(x, degreesOfFreedom) - tail, 0, far);
  return probability >= 0.5 ? t : -t;
}
