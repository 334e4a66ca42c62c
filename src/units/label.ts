/**
 * The symbol of a kind's unit, as it is printed.
 * Units: none. Source: symbols after NIST Special Publication 811.
 */
import { displayOf, type QuantityKind, type UnitSystem } from './kinds.ts';

/** The symbol of a system's unit, such as `MPa`, `ft·lbf` or `turns`; after the number `1` it is `turn`. */
export function unitLabel(kind: QuantityKind, system: UnitSystem, numberText = ''): string {
  const { unit } = displayOf(kind, system);
  return unit === 'turn' && numberText !== '1' ? 'turns' : unit;
}
