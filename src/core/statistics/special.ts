/**
 * The two special functions behind Student's distribution: ln Γ and the incomplete beta function.
 * Units: none.
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 6.1.40 (Stirling's series),
 * 26.5.8 (continued fraction), from memory; evaluated by Lentz's method (from memory).
 */
import { assertBetween, assertPositive } from '../assert.ts';

const SERIES_FROM = 10; // above it the series below is good to the last digit of a double
const MOST_TERMS = 10_000; // far more than any a and b of use ask for
const STIRLING = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360360] as const;

/** What Stirling's formula leaves out: ln Γ(x) − (x − ½) ln x + x − ½ ln 2π, for x ≥ 10. */
function stirlingRemainder(x: number): number {
  const square = 1 / (x * x);
  return STIRLING.reduceRight((total, coefficient) => total * square + coefficient, 0) / x;
}

/** Natural logarithm of the gamma function, ln Γ(x), for x > 0. @throws RangeError otherwise */
export function logGamma(x: number): number {
  assertPositive('x', x);
  let shifted = x;
  let product = 1;
  while (shifted < SERIES_FROM) {
    product *= shifted;
    shifted += 1;
  }
  const stirling = (shifted - 0.5) * Math.log(shifted) - shifted + 0.5 * Math.log(2 * Math.PI);
  return stirling + stirlingRemainder(shifted) - Math.log(product);
}

/** Logarithm of the beta function, ln B(a, b); a large argument costs no digits. */
function logBeta(a: number, b: number): number {
  const large = Math.max(a, b);
  const small = Math.min(a, b);
  if (large < SERIES_FROM) return logGamma(a) + logGamma(b) - logGamma(a + b);
  const sum = large + small;
  const remainder = stirlingRemainder(large) - stirlingRemainder(sum);
  const ratio = -(large - 0.5) * Math.log1p(small / large) - small * (Math.log(sum) - 1);
  return logGamma(small) + ratio + remainder;
}

/** The continued fraction of the incomplete beta function; quick for x < (a + 1)/(a + b + 2). */
function betaFraction(x: number, a: number, b: number): number {
  let numerator = 1;
  let denominator = 1 / (1 - ((a + b) * x) / (a + 1));
  let value = denominator;
  let change = Number.POSITIVE_INFINITY;
  const step = (coefficient: number): void => {
    denominator = 1 / (1 + coefficient * denominator);
    numerator = 1 + coefficient / numerator;
    change = numerator * denominator;
    value *= change;
  };
  for (let m = 1; m < MOST_TERMS && Math.abs(change - 1) > 2 ** -50; m += 1) {
    step((m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m)));
    step((-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1)));
  }
  return value;
}

/** ln(share) of two shares that make up 1, from the smaller one, which holds more digits. */
function logShare(share: number, complement: number): number {
  return share < complement ? Math.log(share) : Math.log1p(-complement);
}

/**
 * Regularised incomplete beta function I_x(a, b), no unit, 0 to 1, for 0 ≤ x ≤ 1 and a, b > 0.
 * `complement` is 1 − x, for callers that know it more exactly than the subtraction would.
 * @throws RangeError unless x is between 0 and 1 and both a and b are above 0
 */
export function incompleteBeta(x: number, a: number, b: number, complement = 1 - x): number {
  assertBetween('x', x, 0, 1);
  assertPositive('a', a);
  assertPositive('b', b);
  const logX = logShare(x, complement);
  const front = Math.exp(a * logX + b * logShare(complement, x) - logBeta(a, b));
  if (x < (a + 1) / (a + b + 2)) return (front * betaFraction(x, a, b)) / a;
  return 1 - (front * betaFraction(complement, b, a)) / b;
}
