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

/** The places after the point that a tolerance makes worth showing, and one more. */
const placesFor = (tolerance: number): number =>
  Math.min(15, Math.max(0, 1 - Math.floor(Math.log10(tolerance))));

function rounded(value: number, tolerance: number): string {
  if (tolerance === 0) return tidy(String(value));
  const places = placesFor(tolerance);
  if (!isTiny(value)) return tidy(value.toFixed(places));
  const leading = -Math.floor(Math.log10(Math.abs(value)));
  return tidy(value.toExponential(Math.min(15, Math.max(1, places - leading))));
}

/** What the source prints, with its zeros at the end where it is known how many it prints. */
export function printedText({ printed, decimals }: CheckRow): string {
  if (isTiny(printed)) return tidy(printed.toExponential());
  return tidy(decimals === undefined ? String(printed) : printed.toFixed(decimals));
}

/** Ours, rounded a place beyond what the check allows. */
export const oursText = ({ ours, tolerance }: CheckRow): string => rounded(ours, tolerance);

/** Ours less the printed one, to two digits. */
export function differenceText({ ours, printed }: CheckRow): string {
  const difference = ours - printed;
  if (difference === 0) return '0';
  return tidy(
    isTiny(difference) ? difference.toExponential(1) : String(Number(difference.toPrecision(2))),
  );
}
