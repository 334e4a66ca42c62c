/** The words of a worked example with their numbers, as the build writes them in both unit systems. Units: SI. */
import { evaluated, inputsAt, kindOf, type Model, numberAt } from '../../models/define-model.ts';
import { type ExampleTemplate, examplePieces, inputsIn, startState } from '../../models/example.ts';
import { type Ink, inkOf, type ModelWords } from '../../models/words.ts';
import type { QuantityKind, UnitSystem } from '../../units/kinds.ts';

/** A number of an example, with the value that readers of either unit system see, in its ink. */
export interface ToldNumber {
  readonly name: string;
  readonly value: number; // SI
  readonly valueUs: number; // SI, from inputs round in US units
  readonly kind: QuantityKind;
  readonly ink: Ink;
  readonly digits?: number;
}

/** Words, or a number. */
export type ToldPart = { readonly text: string } | ToldNumber;

/** The values of an example's model in one of its states. */
export function valuesIn(
  template: ExampleTemplate,
  model: Model,
  state: string,
  system: UnitSystem = 'metric',
) {
  return evaluated(model, inputsAt(model, inputsIn(template, state), system));
}

/** Tells a text of an example; a number that names no state is that of `state`, or of the start. */
export function exampleTeller(template: ExampleTemplate, model: Model, words: ModelWords) {
  return (text: string, state = startState(template)): readonly ToldPart[] =>
    examplePieces(text).map((piece) => {
      if ('text' in piece) return piece;
      const { name, state: own = state, digits } = piece;
      const [value, valueUs] = (['metric', 'us'] as const).map((system) =>
        numberAt(valuesIn(template, model, own, system), name),
      ) as [number, number];
      const kind = kindOf(model, name);
      return { name, value, valueUs, kind, ink: inkOf(words, name), ...(digits && { digits }) };
    });
}
