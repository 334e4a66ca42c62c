/**
 * How well a rim holds the band by friction.
 * Units: SI only (rad).
 * Source: Euler and Eytelwein, as in Shigley, 17-2 (flat belts), from memory.
 */
import { assertAtLeast } from '../assert.ts';

/**
 * Largest ratio of tight to slack force that the rim can hold, exp(μ·θ) after Euler and Eytelwein;
 * no unit, at least 1. More than one whole turn is allowed.
 * @throws RangeError unless friction ≥ 0 and wrap ≥ 0 rad
 */
export function tensionRatio({
  friction,
  wrap,
}: {
  readonly friction: number; // no unit
  readonly wrap: number; // rad
}): number {
  assertAtLeast('friction', friction, 0);
  assertAtLeast('wrap', wrap, 0, 'rad');
  return Math.exp(friction * wrap);
}
