/**
 * Between SI values and numbers in the unit that a system shows for a kind.
 * Units: SI on one side, the system's unit on the other. Source: conversions.ts.
 */
import { amountOf, siValue } from './conversions.ts';
import { displayOf, type QuantityKind, type UnitSystem } from './kinds.ts';
import { UNITS } from './table.ts';

/** The number in the system's unit for an SI value. */
export function fromSi(value: number, kind: QuantityKind, system: UnitSystem): number {
  return amountOf(value, UNITS[displayOf(kind, system).unit].factor);
}

/** The SI value of a number in the system's unit. */
export function toSi(amount: number, kind: QuantityKind, system: UnitSystem): number {
  return siValue(amount, UNITS[displayOf(kind, system).unit].factor);
}
