/**
 * Mean and standard deviation of a list of values.
 * Units: those of the values.
 * Source: definition; sums after Neumaier (ZAMM 54, 1974, from memory) and the corrected two-pass
 * form of Chan, Golub and LeVeque (Am. Stat. 37, 1983, from memory), because readings are small
 * differences of large numbers. Checked against NIST StRD, univariate.
 */
import { assertAtLeast, assertList } from '../assert.ts';

/** Sum of the values with the digits that plain addition drops carried along. (n), may be empty */
export function sum(values: ArrayLike<number>): number {
  let total = 0;
  let lost = 0;
  for (let i = 0; i < values.length; i += 1) {
    const value = values[i] as number;
    const next = total + value;
    lost += Math.abs(total) >= Math.abs(value) ? total - next + value : value - next + total;
    total = next;
  }
  return total + lost;
}

/** Arithmetic mean x̄ = Σx/n in the unit of the values. @throws RangeError if empty or not finite */
export function mean(values: ArrayLike<number>): number {
  assertAtLeast('number of values', values.length, 1);
  assertList('values', values, values.length);
  return sum(values) / values.length;
}

/**
 * Standard deviation s = √(Σ(x − x̄)²/(n − 1)) of a sample, in the unit of the values, at least 0.
 * @throws RangeError with fewer than 2 values, or any that is not finite
 */
export function standardDeviation(values: ArrayLike<number>): number {
  assertAtLeast('number of values', values.length, 2);
  const centre = mean(values);
  const deviations = Array.from(values, (value) => value - centre);
  const squares = sum(deviations.map((deviation) => deviation * deviation));
  // The mean itself is rounded; this takes out what that adds.
  const correction = sum(deviations) ** 2 / values.length;
  return Math.sqrt(Math.max(0, squares - correction) / (values.length - 1));
}
