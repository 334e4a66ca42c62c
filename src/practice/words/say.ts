/** A quantity in the reader's units. */
import { formatQuantity } from '../../units/format-quantity.ts';
import type { QuantityKind, UnitSystem } from '../../units/kinds.ts';

/** Its text. */
export const say = (
  value: number,
  kind: QuantityKind,
  system: UnitSystem,
  digits?: number,
): string => formatQuantity(value, kind, system, { digits });
