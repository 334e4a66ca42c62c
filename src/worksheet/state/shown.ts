/**
 * Numbers as the worksheet shows them: to four digits in a line of arithmetic, as everywhere in a result.
 * Units: SI in.
 * Source: definition.
 */

import type { LoadName } from '../../core/worksheet.ts';
import { type RowName, rowNamer } from '../../form/series.ts';
import { amountOf } from '../../units/conversions.ts';
import { FACTORS } from '../../units/factors.ts';
import { formatNumber, THIN_SPACE } from '../../units/format-number.ts';
import { formatQuantity, formatRange } from '../../units/format-quantity.ts';
import type { QuantityKind, UnitSystem } from '../../units/kinds.ts';
import { unitLabel } from '../../units/label.ts';
import { fromSi } from '../../units/si-value.ts';
import { LOAD, type LoadWords } from '../words/load-words.ts';

/** Writes quantities in one unit system. */
export interface Shown {
  readonly system: UnitSystem;
  /** What tightens, in words; its name is the kind of its quantity. */
  readonly load: LoadWords;
  /** The kind that a quantity is shown as: a torque in the unit of the wrench. */
  readonly kindOf: <Kind extends QuantityKind>(kind: Kind) => Kind | 'torque' | 'inchTorque';
  /** For a line of arithmetic: four digits, without zeros that say nothing. */
  readonly plain: (value: number, kind: QuantityKind) => string;
  /** For a headline: as the kind is usually rounded. */
  readonly quantity: (value: number, kind: QuantityKind) => string;
  readonly range: (low: number, high: number, kind: QuantityKind) => string;
  /** `107 ± 20 MPa`. */
  readonly plusMinus: (value: number, expanded: number, kind: QuantityKind) => string;
  /** A torque in N·mm or in·lbf, a pressure in MPa or psi: from those stress follows without a factor. */
  readonly smallLoad: (value: number) => string;
  /** A number without unit to so many digits. */
  readonly number: (value: number, digits?: number) => string;
  /** A row of the readings, counted from 0, by its number within its series. */
  readonly row: RowName;
}

const DIGITS = { significant: 4, trim: true } as const;

function smallTorque(value: number, system: UnitSystem): string {
  const [amount, unit] =
    system === 'us' ? [amountOf(value, FACTORS['in·lbf']), 'in·lbf'] : [value * 1000, 'N·mm'];
  return formatNumber(amount, DIGITS) + THIN_SPACE + unit;
}

function plain(value: number, kind: QuantityKind, system: UnitSystem): string {
  const unit = unitLabel(kind, system);
  const number = formatNumber(fromSi(value, kind, system), DIGITS);
  return unit === '' ? number : number + THIN_SPACE + unit;
}

/** The writer for a unit system, of a mill that is tightened by a screw with a wrench of the system's own unit, with one series of readings, unless said. */
export function shownIn(
  system: UnitSystem,
  load: LoadName = 'torque',
  row: RowName = rowNamer(),
  torque: 'torque' | 'inchTorque' = 'torque',
): Shown {
  const kindOf = <Kind extends QuantityKind>(kind: Kind) => (kind === 'torque' ? torque : kind);
  return {
    system,
    load: LOAD[load],
    kindOf,
    plain: (value, kind) => plain(value, kindOf(kind), system),
    quantity: (value, kind) => formatQuantity(value, kindOf(kind), system),
    range: (low, high, kind) => formatRange(low, high, kindOf(kind), system),
    plusMinus: (value, expanded, kind) =>
      formatQuantity(value, kindOf(kind), system, { uncertainty: expanded }),
    smallLoad: (value) =>
      load === 'torque' ? smallTorque(value, system) : plain(value, 'stress', system),
    number: (value, digits = 4) => formatNumber(value, { significant: digits, trim: true }),
    row,
  };
}
