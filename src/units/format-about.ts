/**
 * Numbers that are round in one unit system, said in the other: in the fewest digits that come near enough.
 * Units: SI in; text in the unit that the system shows for the kind.
 * Source: definition.
 */
import { formatQuantity } from './format-quantity.ts';
import type { QuantityKind, UnitSystem } from './kinds.ts';
import { fromSi } from './si-value.ts';

const NEAR = 0.007; // share of the amount
const SAME = 1e-9;
const MOST_DIGITS = 3;

/** `0.1 N·m`, `about 0.074 ft·lbf`: within 0.7 %, and “about” where that is not all of it. */
export function formatAbout(value: number, kind: QuantityKind, system: UnitSystem): string {
  const amount = fromSi(value, kind, system);
  const off = (digits: number) => Math.abs(Number(amount.toPrecision(digits)) - amount);
  let digits = 1;
  while (digits < MOST_DIGITS && off(digits) > NEAR * Math.abs(amount)) digits += 1;
  const about = off(digits) > SAME * Math.abs(amount) ? 'about ' : '';
  return about + formatQuantity(value, kind, system, { digits });
}
