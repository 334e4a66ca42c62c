/**
 * The unit of a number typed without one. A sheet says which unit each kind of box had when it was written; where
 * the boxes now show another, the old unit is written behind the number: what was typed keeps its meaning to the
 * last digit, and fractions stay fractions.
 * Units: symbols of the units table.
 * Source: definition.
 */
import { displayOf, type QuantityKind, type UnitSystem } from '../units/kinds.ts';
import { leadingNumber } from '../units/reading/parse-number.ts';
import { tidyText } from '../units/reading/tidy-text.ts';
import { FIELDS } from './fields.ts';
import { fieldAt } from './paths.ts';
import { areBareNumbers } from './several.ts';
import { entriesOf, type Typed, typedFrom } from './typed.ts';

/** Unit of a bare number, by kind of box. */
export type BareUnits = Readonly<Partial<Record<QuantityKind, string>>>;

const kinds = [
  ...new Set(Object.values(FIELDS).flatMap((field) => ('kind' in field ? [field.kind] : []))),
];

/** The units that the boxes show in a system, for every kind that has more than a number. */
export function bareUnits(system: UnitSystem): BareUnits {
  const pairs = kinds.map((kind) => [kind, displayOf(kind, system).unit] as const);
  return Object.fromEntries(pairs.filter(([, unit]) => unit !== ''));
}

/** Kinds of box whose numbers have a unit. */
export const KINDS_WITH_UNIT: ReadonlySet<string> = new Set(Object.keys(bareUnits('metric')));

/** Whether a text is a number without a unit. */
export function isBareNumber(text: string): boolean {
  const number = leadingNumber(tidyText(text));
  return number.ok && number.rest === '';
}

/** Whether a text is one number, or several, without a unit. */
export const isBare = (text: string): boolean => isBareNumber(text) || areBareNumbers(text);

/** One text with its unit written out where it is no longer the box's own, and left off where it is. */
function reworded(typed: string, was: string | undefined, is: string | undefined): string {
  if (is === undefined || was === undefined || was === is) return typed;
  if (isBare(typed)) return `${typed.trim()} ${was}`;
  const bare = typed.endsWith(` ${is}`) ? typed.slice(0, -is.length - 1) : '';
  return isBare(bare) ? bare : typed;
}

/** The sheet so that its bare numbers, written in units `was`, mean the same in units `is`. */
export function inUnits(typed: Typed, was: BareUnits, is: BareUnits): Typed {
  return typedFrom(
    entriesOf(typed).map(([path, text]) => {
      const field = fieldAt(path);
      return [path, 'kind' in field ? reworded(text, was[field.kind], is[field.kind]) : text];
    }),
  );
}
