/**
 * Quantities as they are shown and put into input boxes.
 * Units: SI in; text in the unit that the system shows for the kind. Source: NIST Special Publication 811, chapter 7.
 * Without an uncertainty the kind's rounding rule holds; with one, the uncertainty has two digits, the most that the GUM
 * (JCGM 100:2008, 7.2.6, from memory) allows, and the value ends where it ends.
 */
import {
  decimalsFor,
  formatFixed,
  formatNumber,
  plainFixed,
  roundingDecimals,
  THIN_SPACE,
} from './format-number.ts';
import { displayOf, type QuantityKind, type Rounding, type UnitSystem } from './kinds.ts';
import { unitLabel } from './label.ts';
import { fromSi } from './si-value.ts';

const UNCERTAINTY_DIGITS = 2;
const MOST_DECIMALS_BESIDE = 12; // a smaller uncertainty is shown as 0
const NO_BREAK_SPACE = '\u00a0';
const MOST_EXTRA_DECIMALS = 3; // ends closer than that are shown as one number
const WRITTEN_OUT = { below: 1e15, decimals: 15 };

/** `uncertainty` is SI, of the same kind, shown after ±; `digits` asks for so many significant digits instead of the kind's own. */
export interface FormatOptions {
  readonly uncertainty?: number | undefined;
  readonly digits?: number | undefined;
}

/** A shown quantity in its parts, for figures and tables. */
export interface QuantityParts {
  readonly number: string;
  readonly uncertainty?: string;
  readonly unit: string;
}

/** The parts of a shown quantity; `uncertainty` is left out where none above 0 is given. */
export function formatParts(
  value: number,
  kind: QuantityKind,
  system: UnitSystem,
  { uncertainty, digits }: FormatOptions = {},
): QuantityParts {
  const amount = fromSi(value, kind, system);
  const spread = fromSi(uncertainty ?? 0, kind, system);
  if (Number.isFinite(amount) && Number.isFinite(spread) && spread > 0) {
    const decimals = Math.min(decimalsFor(spread, UNCERTAINTY_DIGITS), MOST_DECIMALS_BESIDE);
    const [number, beside] = [formatFixed(amount, decimals), formatFixed(spread, decimals)];
    return { number, uncertainty: beside, unit: unitLabel(kind, system) };
  }
  const rounding =
    digits === undefined ? displayOf(kind, system).rounding : { significant: digits };
  const number = formatNumber(amount, rounding);
  return { number, unit: unitLabel(kind, system, number) };
}

function withUnit(text: string, unit: string): string {
  if (unit === '') return text;
  return unit === '°' ? text + unit : text + THIN_SPACE + unit;
}

/** A quantity as text, such as `134 ± 9 MPa`, with no-break spaces. */
export function formatQuantity(
  value: number,
  kind: QuantityKind,
  system: UnitSystem,
  options?: FormatOptions,
): string {
  const { number, uncertainty, unit } = formatParts(value, kind, system, options);
  const spread = uncertainty === undefined ? [] : [uncertainty];
  return withUnit([number, ...spread].join(`${NO_BREAK_SPACE}±${NO_BREAK_SPACE}`), unit);
}

function rangeDecimals(from: number, to: number, rounding: Rounding): number {
  const sizes = [from, to].filter(Number.isFinite).map(Math.abs);
  const usual = roundingDecimals(Math.max(0, ...sizes), rounding);
  const width = to - from;
  const telling = Number.isFinite(width) ? decimalsFor(width, 1) : usual;
  return Math.min(Math.max(usual, telling), usual + MOST_EXTRA_DECIMALS);
}

/** A range as text, such as `120 to 148 MPa`: both ends to the same decimals, and enough of them to tell the ends apart. */
export function formatRange(
  low: number,
  high: number,
  kind: QuantityKind,
  system: UnitSystem,
): string {
  const { rounding } = displayOf(kind, system);
  const [from, to] = [fromSi(low, kind, system), fromSi(high, kind, system)];
  const decimals = rangeDecimals(from, to, rounding);
  const [start, end] = [from, to].map((amount) => formatFixed(amount, decimals, rounding.trim));
  if (start === end) return formatQuantity(low, kind, system);
  return withUnit(`${start}${NO_BREAK_SPACE}to${NO_BREAK_SPACE}${end}`, unitLabel(kind, system));
}

/** Plain text for an input box: no unit, no separators; it reads back within half of the box's last decimal. */
export function formatInput(value: number, kind: QuantityKind, system: UnitSystem): string {
  const amount = fromSi(value, kind, system);
  if (!Number.isFinite(amount)) return '';
  const decimals = Math.max(displayOf(kind, system).inputDecimals, decimalsFor(amount, 3));
  const isLong = Math.abs(amount) >= WRITTEN_OUT.below || decimals > WRITTEN_OUT.decimals;
  return isLong ? String(amount) : plainFixed(amount, decimals, true);
}
