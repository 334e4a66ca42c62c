/**
 * What can stand on the form: a box for a quantity, a box for words, a choice.
 * Units: SI.
 * Source: definition.
 */
import type { InputLimit } from '../core/worksheet.ts';
import type { QuantityKind } from '../units/kinds.ts';

/** What everything on the form has. */
interface Named {
  readonly label: string;
  readonly of?: string; // what the label belongs to, where it does not say so itself
  readonly hint?: string;
}

/** A box for a quantity; `usual` is the range seen on small mills, `whenEmpty` the value that an empty box stands for. */
export interface QuantityField extends Named {
  readonly kind: QuantityKind;
  readonly usual: readonly [low: number, high: number];
  readonly limit: InputLimit;
  readonly whenEmpty?: number | undefined;
  readonly several?: true; // may hold several readings, of which the mean is taken
}

/** A box for words, of at most so many letters. */
export interface WordsField extends Named {
  readonly letters: number;
}

/** A choice: what may be chosen and what it is called; the first is the start. */
export interface ChoiceField<Option extends string = string> extends Named {
  readonly options: Readonly<Record<Option, string>>;
}

/** Anything on the form that can be filled in. */
export type Field = QuantityField | WordsField | ChoiceField;

/** The most letters that stand at a path of any kind. */
export const LONGEST_TEXT = 200;

const LONGEST_NUMBER = 100; // letters; the rest is room for a unit, written out on a change of units

/** The most letters that can be typed into a box. */
export const mostLetters = (box: Field): number =>
  'letters' in box ? box.letters : LONGEST_NUMBER;

type Extras = Partial<Pick<QuantityField, 'limit' | 'of' | 'hint' | 'whenEmpty' | 'several'>>;

/** A box for a quantity, which must be more than 0 unless said. */
export function field(
  label: string,
  kind: QuantityKind,
  usual: QuantityField['usual'],
  extras: Extras = {},
): QuantityField {
  return { label, kind, usual, limit: 'positive', ...extras };
}

/** A box for words. */
export const words = (label: string, letters: number, hint?: string): WordsField => ({
  label,
  letters,
  ...(hint !== undefined && { hint }),
});

/** A choice between options, the first of which is the start. */
export const choice = <Option extends string>(
  label: string,
  options: Readonly<Record<Option, string>>,
): ChoiceField<Option> => ({ label, options });
