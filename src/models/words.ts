/**
 * How a model's quantities are named to a person: the build alone reads it, beside the model that the browser runs.
 * Each input and output owes its words; a missing or misspelt one stops the check.
 * Units: none.
 * Source: definition.
 */
import type { ChoiceInput, Model } from './define-model.ts';

/** Which ink a quantity is written in: blue for what the reader sets, red for what the band feels. */
export type Ink = 'hand' | 'steel' | 'plain';

/** A quantity's name. */
export interface Label {
  /** In plain words, lower case, for controls and screen readers. */
  readonly label: string;
  /** TeX of its symbol, for equations. */
  readonly symbol: string;
}

/** An output's name, and its ink. */
export interface OutputWords extends Label {
  readonly ink: Ink;
}

/** A choice's name, and the words of its options. */
export interface ChoiceWords<Name extends string = string> {
  readonly label: string;
  readonly options: Readonly<Record<Name, string>>;
}

type WordsOf<Spec> = Spec extends ChoiceInput<infer Name> ? ChoiceWords<Name> : Label;

/** The words for everything that a model has. */
export interface ModelWords<M extends Model = Model> {
  readonly inputs: { readonly [N in keyof M['inputs']]: WordsOf<M['inputs'][N]> };
  readonly outputs: Readonly<Record<keyof M['outputs'], OutputWords>>;
}

const written =
  (ink: Ink) =>
  (label: string, symbol = ''): OutputWords => ({ label, symbol, ink });

/** Words in the hand's ink: of an input, or of an output that is the hand's. */
export const hand = written('hand');
/** Words of what the band feels. */
export const steel = written('steel');
/** Words of everything else. */
export const plain = written('plain');

/** The ink that a quantity is written in, everywhere. @throws RangeError for a name that nothing has */
export function inkOf({ inputs, outputs }: ModelWords, name: string): Ink {
  if (Object.hasOwn(inputs, name)) return 'hand';
  const ink = Object.hasOwn(outputs, name) && outputs[name]?.ink;
  if (!ink) throw new RangeError(`${name} must be an input or output of the model`);
  return ink;
}

/** A quantity's name. @throws RangeError for a name that no quantity has */
export function labelOf({ inputs, outputs }: ModelWords, name: string): Label {
  const all: Readonly<Record<string, Label | ChoiceWords>> = { ...inputs, ...outputs };
  const found = Object.hasOwn(all, name) ? all[name] : undefined;
  if (found && 'symbol' in found) return found;
  throw new RangeError(`${name} must be a quantity of the model`);
}
