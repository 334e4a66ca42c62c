/** The figures of a row as text: printed as the source has them, ours to one place more. */
import type { CheckRow } from './rows.ts';

const SUPERSCRIPT = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const raised = (exponent: number): string =>
  (exponent < 0 ? '⁻' : '') +
  Array.from(String(Math.abs(exponent)), (digit) => SUPERSCRIPT[Number(digit)]).join('');

/** Plain where that is short, else as a power of ten; a true minus. */
function tidy(text: string): string {
  const [mantissa = '', exponent] = text.split('e');
  const power = exponent === undefined ? '' : ` × 10${raised(Number(exponent))}`;
  return mantissa.replace('-', '−') + power;
}

const isTiny = (value: number): boolean => value !== 0 && Math.abs(value) < 1e-3;

/** Significant digits of a number as it is written here. */
const digitsOf = (value: number): number =>
  Math.abs(value).toExponential().split('e')[0]?.replace('.', '').length ?? 1;

const exponentOf = (value: number): number => Math.floor(Math.log10(Math.abs(value)));

/** Digits worth showing: to one place beyond the tolerance, and no fewer than are printed. */
function digitsFor({ printed, ours, tolerance }: CheckRow): number {
  const worth = tolerance === 0 ? 1 : exponentOf(ours) - exponentOf(tolerance) + 2;
  return Math.min(15, Math.max(1, worth, digitsOf(printed)));
}

/** What the source prints, with its zeros at the end where it is known how many it prints. */
export function printedText({ printed, decimals }: CheckRow): string {
  if (isTiny(printed)) return tidy(printed.toExponential());
  return tidy(decimals === undefined ? String(printed) : printed.toFixed(decimals));
}

/** Ours, rounded a place beyond what the check allows. */
export function oursText(row: CheckRow): string {
  const { ours, printed } = row;
  if (ours === 0 || (Number.isInteger(ours) && ours === printed)) return tidy(String(ours));
  const digits = digitsFor(row);
  if (isTiny(ours)) return tidy(ours.toExponential(digits - 1));
  return tidy(ours.toFixed(Math.max(0, digits - 1 - exponentOf(ours))));
}

/** Ours less the printed one, to two digits; what the machine's own rounding leaves is nothing. */
export function differenceText({ ours, printed }: CheckRow): string {
  const difference = ours - printed;
  if (Math.abs(difference) <= 4 * Number.EPSILON * Math.abs(printed)) return '0';
  return tidy(
    isTiny(difference) ? difference.toExponential(1) : String(Number(difference.toPrecision(2))),
  );
}
