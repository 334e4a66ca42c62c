/**
 * The zero of a function between two points where its signs differ.
 * Units: the caller's.
 * Source: T. R. Chandrupatla, Advances in Engineering Software 28 (1997) 145, from memory: inverse
 * quadratic interpolation where the curve allows it, else halving, so it never leaves the bracket.
 */
import { assertFinite } from './assert.ts';

/** Share of the bracket at which to look next: interpolated if the three points allow it, else ½. */
function nextShare(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const xi = (a - b) / (c - b);
  const phi = (fa - fb) / (fc - fb);
  if (!(phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi)) return 0.5;
  const left = (fa / (fb - fa)) * (fc / (fb - fc));
  const right = ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb));
  return left + right;
}

/**
 * Where `f` is zero between `low` and `high`, to the last digits of a double.
 * @throws RangeError unless both ends are finite and f has different signs there
 */
export function rootBetween(f: (x: number) => number, low: number, high: number): number {
  assertFinite('low', low);
  assertFinite('high', high);
  let [a, b, c] = [high, low, low];
  let [fa, fb] = [f(high), f(low)];
  if (fa === 0) return high;
  if (fb === 0) return low;
  if (!(fa > 0 !== fb > 0)) throw new RangeError(`f must be of two signs over ${low} to ${high}`);
  let fc = fb;
  let share = 0.5;
  for (;;) {
    const x = a + share * (b - a);
    const fx = f(x);
    if (fx > 0 === fa > 0) [c, fc] = [a, fa];
    else [c, fc, b, fb] = [b, fb, a, fa];
    [a, fa] = [x, fx];
    const best = Math.abs(fa) < Math.abs(fb) ? a : b;
    const margin = (2 ** -52 * Math.abs(best) + Number.MIN_VALUE) / Math.abs(b - a);
    if (margin >= 0.5 || fa === 0) return best;
    share = Math.min(1 - margin, Math.max(margin, nextShare(a, b, c, fa, fb, fc)));
  }
}
