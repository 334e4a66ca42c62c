/**
 * Straight scales between a quantity and the drawing, and round tick marks in the reader's own unit. (d3-scale would do
 * the first too, for a third of the script that a lesson may load.)
 */
import { ticks as roundNumbers } from 'd3-array';
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
