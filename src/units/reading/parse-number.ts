/**
 * Numbers as people write them: `27.1`, `0,9`, `.042`, `1.2e3`, `15 373`, `3/8`, `20 3/4`, `20-3/4`.
 * Units: none. Source: common practice, no source; a space between groups of three digits as in NIST SP 811, 10.5.3.
 * A comma is always a decimal comma. Where it could as well part thousands, as in `1,200`, the text is refused.
 */
import { type Reading, type Refusal, refusal } from './refusal.ts';
import { tidyText } from './tidy-text.ts';

/** A number found at the start of a text, and the text after it. */
export interface LeadingNumber {
  readonly ok: true;
  readonly value: number;
  readonly rest: string;
}

const COMMAS_BY_THREE = /^[+-]?\d{1,3}(?:,\d{3})+(?:\.\d*)?(?![\d.,])/;
const POINTS_BY_THREE = /^[+-]?\d{1,3}(?:\.\d{3})+(?:,\d*|\.\d{3})(?![\d.,])/;
const FRACTION = /^([+-]?)(?:(\d+)[ -])?(\d+) ?\/ ?(\d+)(?![\d.,/])/;
const DECIMAL = /^([+-]?)(?=[.,]?\d)(\d{1,3}(?: \d{3})+(?!\d)|\d*)(?:[.,](\d*))?(?:e([+-]?\d+))?/i;
const STARTS_A_UNIT = /^-?(?!.* \d)[\p{L}°º˚℃℉"'%#]/u;

function thousands(text: string): Refusal | undefined {
  const [commas] = COMMAS_BY_THREE.exec(text) ?? [];
  const [points] = POINTS_BY_THREE.exec(text) ?? [];
  const typed = commas ?? points;
  if (typed === undefined || /^[+-]?0+,\d{3}$/.test(typed)) return undefined;
  const joined =
    points === undefined ? typed.replaceAll(',', '') : typed.replaceAll('.', '').replace(',', '.');
  const whole = String(Number(joined));
  if (/^[+-]?\d+,\d{3}$/.test(typed)) {
    const decimal = String(Number(typed.replace(',', '.')));
    return refusal(
      'thousands',
      `“${typed}” can be read in two ways. Write ${decimal} or ${whole}.`,
    );
  }
  return refusal('thousands', `“${typed}” has marks between its thousands. Write ${whole}.`);
}

function properFraction(whole: number, top: number, bottom: number): string {
  const left = top % bottom;
  const carried = String(whole + (top - left) / bottom);
  return left === 0 ? carried : `${carried} ${left}/${bottom}`;
}

function fraction(match: RegExpExecArray, text: string): LeadingNumber | Refusal {
  const [typed, sign, wholeText] = match;
  const [whole = 0, top = 0, bottom = 0] = match.slice(2).map((part) => Number(part ?? 0));
  if (bottom === 0) {
    return refusal('fraction', `“${typed}” divides by zero. A fraction looks like 3/8.`);
  }
  if (wholeText !== undefined && top >= bottom) {
    const meant = sign + properFraction(whole, top, bottom);
    return refusal(
      'fraction',
      `“${typed}” holds more than one whole. If it is meant, write ${meant}.`,
    );
  }
  const size = whole + top / bottom;
  return { ok: true, value: sign === '-' ? -size : size, rest: text.slice(typed.length).trim() };
}

function decimal(text: string): LeadingNumber | Refusal {
  const match = DECIMAL.exec(text);
  if (!match) return refusal('notANumber', `“${text}” is not a number.`);
  const [typed, sign = '', whole = '', part = '', exponent = '0'] = match;
  const value = Number(`${sign}${whole.replaceAll(' ', '')}.${part}e${exponent}`);
  if (!Number.isFinite(value)) return refusal('tooLarge', `“${typed}” is too large.`);
  return { ok: true, value, rest: text.slice(typed.length).trim() };
}

/** The number at the start of a tidied text and the unit after it, which may be empty. */
export function leadingNumber(text: string): LeadingNumber | Refusal {
  const refused = thousands(text);
  if (refused) return refused;
  const match = FRACTION.exec(text);
  const found = match ? fraction(match, text) : decimal(text);
  if (found.ok && found.rest !== '' && !STARTS_A_UNIT.test(found.rest))
    return refusal('notANumber', `“${text}” is not one number.`);
  return found;
}

/** A number alone, with nothing after it. */
export function parseNumber(text: string): Reading {
  const tidied = tidyText(text);
  const found = leadingNumber(tidied);
  if (!found.ok) return found;
  if (found.rest !== '') return refusal('notANumber', `“${tidied}” is not a number.`);
  return { ok: true, value: found.value };
}
