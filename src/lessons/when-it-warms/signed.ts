/**
 * Numbers with their sign, where it matters whether something rose or fell.
 * Units: SI in; text in the reader's units.
 * Source: definition.
 */
import { formatQuantity } from '../../units/format-quantity.ts';
import type { QuantityKind, UnitSystem } from '../../units/kinds.ts';

/** A quantity with a plus where it is above nought. */
export function signed(value: number, kind: QuantityKind, system: UnitSystem, digits?: number) {
  return `${value > 0 ? '+' : ''}${formatQuantity(value, kind, system, { digits })}`;
}

/** A warmth with its sign. */
export const signedDegrees = (value: number, system: UnitSystem): string =>
  signed(value, 'temperatureDifference', system);
