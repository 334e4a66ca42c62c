/**
 * Numbers as they are shown: rounded, with a real minus sign, thousands parted by a thin space from five digits up.
 * Units: none. Source: NIST SP 811, 10.5.3, for the spaces; the rest is common practice, no source.
 */
import type { Rounding } from './kinds.ts';

/** Narrow no-break space, between groups of digits and before a unit. */
export const THIN_SPACE = '\u202f';

const LARGEST_WRITTEN_OUT = 1e15;
const SMALLEST_SHOWN = 1e-9; // smaller is shown as 0: rounding noise, in any unit the site shows
const MOST_DECIMALS = 7; // longer is shown as a power of ten
const LONGEST_FRACTION = 20;

/** How many decimals show `value` to so many significant digits; negative where it ends in rounded tens. */
export function decimalsFor(value: number, significant: number): number {
  if (value === 0) return 0;
  return significant - 1 - Number(value.toExponential(significant - 1).split('e')[1]);
}

/** `value` rounded half away from zero to `decimals`, in plain ASCII, never `-0`; |value| below 1e21, `trim` drops end zeros. */
export function plainFixed(value: number, decimals: number, trim = false): string {
  const step = 10 ** Math.max(0, -decimals);
  const size = Math.round(Math.abs(value) / step) * step;
  const places = Math.min(Math.max(decimals, 0), LONGEST_FRACTION);
  const text = decimals < 0 ? size.toFixed(0) : Math.abs(value).toFixed(places);
  const sign = value < 0 && /[1-9]/.test(text) ? '-' : '';
  return sign + (trim && text.includes('.') ? text.replace(/\.?0+$/, '') : text);
}

function dressed(plain: string): string {
  const [whole = '', part] = plain.replace('-', '−').split('.');
  const grouped = /\d{5}/.test(whole) ? whole.replace(/\B(?=(?:\d{3})+$)/g, THIN_SPACE) : whole;
  return part === undefined ? grouped : `${grouped}.${part}`;
}

function powerOfTen(value: number, significant: number): string {
  const [mantissa = '', exponent = ''] = value.toExponential(significant - 1).split('e');
  const raised = Array.from(
    String(Number(exponent)),
    (sign) => '⁻⁰¹²³⁴⁵⁶⁷⁸⁹'['-0123456789'.indexOf(sign)],
  );
  return `${dressed(mantissa)} × 10${raised.join('')}`;
}

/** A number shown to fixed decimals (negative: rounded tens); `–` for NaN, `∞` for infinity. */
export function formatFixed(value: number, decimals: number, trim = false): string {
  if (Number.isNaN(value)) return '–';
  if (Math.abs(value) === Number.POSITIVE_INFINITY) return value < 0 ? '−∞' : '∞';
  if (Math.abs(value) >= LARGEST_WRITTEN_OUT) return powerOfTen(value, 3);
  return dressed(plainFixed(value, decimals, trim));
}

/** The decimals that a rounding rule gives `value`; a value too small for fixed decimals keeps one significant digit. */
export function roundingDecimals(value: number, rounding: Rounding): number {
  if ('significant' in rounding) return decimalsFor(value, rounding.significant);
  return Math.max(rounding.decimals, decimalsFor(value, 1));
}

/** A number shown after a rounding rule; as a power of ten where it would need more than seven decimals. */
export function formatNumber(value: number, rounding: Rounding): string {
  const shown = Math.abs(value) < SMALLEST_SHOWN ? 0 : value;
  const decimals = Number.isFinite(shown) ? roundingDecimals(shown, rounding) : 0;
  if (decimals > MOST_DECIMALS)
    return powerOfTen(shown, 'significant' in rounding ? rounding.significant : 1);
  return formatFixed(shown, decimals, rounding.trim);
}
