/** Straight scales between a quantity and the drawing, and round tick marks in the reader's own unit. */
import { scaleLinear } from 'd3-scale';
import { formatNumber } from '../units/format-number.ts';
import type { QuantityKind, UnitSystem } from '../units/kinds.ts';
import { fromSi, toSi } from '../units/si-value.ts';

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
  const ends = [fromSi(low, kind, system), fromSi(high, kind, system)];
  return scaleLinear(ends, [0, 1])
    .ticks(count)
    .map((amount) => ({
      value: toSi(amount, kind, system),
      text: formatNumber(amount, { significant: 6, trim: true }),
    }));
}
