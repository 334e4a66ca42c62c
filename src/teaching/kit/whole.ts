/**
 * Whole numbers as a teacher types them, between two limits; a refusal says what was typed and what would be right.
 * Units: counts.
 */
import { parseNumber } from '../../units/reading/parse-number.ts';

/** The least and the most that a box takes. */
export interface Limits {
  readonly least: number;
  readonly most: number;
}

/** What a box was found to hold. */
export type Whole =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly reason: string };

const refused = (typed: string, { least, most }: Limits): Whole => {
  const found = typed === '' ? 'Nothing is typed.' : `“${typed}” does not fit.`;
  return { ok: false, reason: `${found} Type a whole number from ${least} to ${most}.` };
};

/** So many of a thing: `1 learner`, `9 learners`. */
export const counted = (count: number, thing: string): string =>
  `${count} ${thing}${count === 1 ? '' : 's'}`;

/** The whole number that a text is, between the limits. */
export function wholeIn(text: string, limits: Limits): Whole {
  const typed = text.trim();
  const number = typed === '' ? undefined : parseNumber(typed);
  const isGood =
    number?.ok === true &&
    Number.isInteger(number.value) &&
    number.value >= limits.least &&
    number.value <= limits.most;
  return isGood ? { ok: true, value: number.value } : refused(typed.slice(0, 24), limits);
}
