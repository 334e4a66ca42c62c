/**
 * Numbers without a unit below one that names its own, in a column of another: nobody can know in which they are meant.
 * Units: as typed.
 * Source: definition; nought is the same in any unit of length, torque or pressure.
 */
import { displayOf, type QuantityKind, type UnitSystem } from '../../units/kinds.ts';
import { ASKED } from '../../units/reading/asked.ts';
import { findUnit } from '../../units/reading/lookup.ts';
import { leadingNumber } from '../../units/reading/parse-number.ts';
import { tidyText } from '../../units/reading/tidy-text.ts';

/** What is to be asked about a column. */
export interface UnitAsked {
  readonly from: number; // the row that names a unit
  readonly unit: string; // as it is typed there
  readonly rows: readonly number[]; // below it, without a unit, from the top
}

const MAY_NAME_A_UNIT = /[^\d\s.,/+−-]/;

/** What is to be asked about a column, from the top row on; rows that name yet another unit wait until that is answered. */
export function unitAsked(
  texts: readonly string[],
  kind: QuantityKind,
  system: UnitSystem,
): UnitAsked | undefined {
  if (!texts.some((text) => MAY_NAME_A_UNIT.test(text))) return undefined;
  const own = displayOf(kind, system).unit;
  let named: Omit<UnitAsked, 'rows'> | undefined;
  let asked: UnitAsked | undefined;
  for (const [row, text] of texts.entries()) {
    const number = leadingNumber(tidyText(text));
    if (!number.ok) continue;
    const unit = findUnit(number.rest, ASKED[kind].dimension);
    if (unit !== undefined) named = unit === own ? undefined : { from: row, unit: number.rest };
    else if (number.rest === '' && number.value !== 0 && named) {
      asked ??= { ...named, rows: [] };
      if (asked.unit === named.unit) asked = { ...asked, rows: [...asked.rows, row] };
    }
  }
  return asked;
}
