/**
 * Between SI values and numbers in the unit that a system shows for a kind.
 * Units: SI on one side, the system's unit on the other. Source: conversions.ts.
 */
import { amountOf, siValue } from './conversions.ts';
import { FACTORS } from './factors.ts';
import { displayOf, type QuantityKind, type UnitSystem } from './kinds.ts';

/** The number in the system's unit for an SI value. */
export function fromSi(value: number, kind: QuantityKind, system: UnitSystem): number {
  return amountOf(value, FACTORS[displayOf(kind, system).unit]);
}

/** The SI value of a number in the system's unit. */
export function toSi(amount: number, kind: QuantityKind, system: UnitSystem): number {
  return siValue(amount, FACTORS[displayOf(kind, system).unit]);
}
