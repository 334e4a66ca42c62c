/**
 * The words for a kind's unit: the symbol to print and the name to speak.
 * Units: none. Source: symbols after NIST Special Publication 811.
 */
import { displayOf, type QuantityKind, type UnitSystem } from './kinds.ts';
import { UNITS } from './table.ts';

/** The symbol of a system's unit, such as `MPa`, `ft·lbf` or `turns`; after the number `1` it is `turn`. */
export function unitLabel(kind: QuantityKind, system: UnitSystem, numberText = ''): string {
  const { unit } = displayOf(kind, system);
  return unit === 'turn' && numberText !== '1' ? UNITS.turn.many : unit;
}

/** The spoken name of a system's unit, such as `megapascals`; after the number `1` it is singular. */
export function unitSpoken(kind: QuantityKind, system: UnitSystem, numberText = ''): string {
  const { one, many } = UNITS[displayOf(kind, system).unit];
  return numberText === '1' ? one : many;
}
