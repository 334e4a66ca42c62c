/**
 * The normal distribution, the limit of Student's for very many degrees of freedom.
 * Units: none (standard deviations).
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.11 (series) and
 * 26.2.14 (continued fraction), from memory.
 */
import { assertFinite } from '../assert.ts';

const FRACTION_FROM = 3; // below it the series is short, above it the continued fraction
const FRACTION_TERMS = 60; // enough for the last digit of a double from 3 upward

/** Density φ(z) = exp(−z²/2)/√(2π), no unit. @throws RangeError unless z is finite */
export function normalDensity(z: number): number {
  assertFinite('z', z);
  return Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
}

function centreSeries(z: number): number {
  let term = z;
  let total = z;
  for (let n = 3; Math.abs(term) > 2 ** -54 * Math.abs(total); n += 2) {
    term *= (z * z) / n;
    total += term;
  }
  return normalDensity(z) * total;
}

function tailFraction(z: number): number {
  let denominator = z;
  for (let n = FRACTION_TERMS; n > 0; n -= 1) denominator = z + n / denominator;
  return normalDensity(z) / denominator;
}

/**
 * Probability of a standard normal above z, 1 − Φ(z), no unit, 0 to 1; exact in the far tail too.
 * @throws RangeError unless z is finite
 */
export function normalUpperTail(z: number): number {
  assertFinite('z', z);
  if (Math.abs(z) < FRACTION_FROM) return 0.5 - centreSeries(z);
  return z > 0 ? tailFraction(z) : 1 - tailFraction(-z);
}
