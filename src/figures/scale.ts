/**
 * Straight scales between a quantity and the drawing, and round tick marks in the reader's own unit. (d3-scale and
 * d3-array would do it too, at ten times the weight of what is used here; the page's script has a budget.)
 */
import { formatFixed } from '../units/format-number.ts';
import type { QuantityKind, UnitSystem } from '../units/kinds.ts';
import { fromSi, toSi } from '../units/si-value.ts';

/** From a quantity to a place in the drawing. */
export type Scale = (value: number) => number;

/** The straight scale that takes `domain` (two different ends) to `range`. */
export function linearScale(
  [from, to]: readonly [number, number],
  [start, end]: readonly [number, number],
): Scale {
  const slope = (end - start) / (to - from);
  return (value) => start + (value - from) * slope;
}

/** 1, 2, 5 or 10, whichever is nearest in proportion. */
function roundFactor(lead: number): number {
  if (lead >= Math.sqrt(50)) return 10;
  if (lead >= Math.sqrt(10)) return 5;
  return lead >= Math.SQRT2 ? 2 : 1;
}

/** The multiples of 1, 2 or 5 times a power of ten from `low` to `high`, about `count` of them. */
export function roundNumbers(low: number, high: number, count: number): readonly number[] {
  const rough = (high - low) / count;
  const power = Math.floor(Math.log10(rough));
  const factor = roundFactor(rough / 10 ** power);
  // A step below 1 is the inverse of a whole number: dividing by that brings in no digits of noise.
  const inverse = 10 ** -power / factor;
  const step = 10 ** power * factor;
  const amountAt = (place: number) => (power < 0 ? place / inverse : place * step);
  const placeOf = (amount: number) => Math.round(power < 0 ? amount * inverse : amount / step);
  const first = placeOf(low) + Number(amountAt(placeOf(low)) < low);
  const last = placeOf(high) - Number(amountAt(placeOf(high)) > high);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => amountAt(first + i));
}

/** One tick: where it stands, in SI, and its number in the reader's unit. */
export interface Tick {
  readonly value: number;
  readonly text: string;
}

/** About `count` round ticks from `low` to `high` (SI) in the unit in which `system` shows the kind. */
export function ticks(
  low: number,
  high: number,
  kind: QuantityKind,
  system: UnitSystem,
  count: number,
): readonly Tick[] {
  const shown = (value: number) => fromSi(value, kind, system);
  return roundNumbers(shown(low), shown(high), count).map((amount) => ({
    value: toSi(amount, kind, system),
    text: formatFixed(amount, 6, true),
  }));
}
