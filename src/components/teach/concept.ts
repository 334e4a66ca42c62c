/**
 * The ten questions of before and after, as their file has them, with the numbers of their lesson's model.
 * Units: SI.
 */
import { type InputsOf, type Model, numberAt, type Values } from '../../models/define-model.ts';
import type { QuantityKind } from '../../units/kinds.ts';
import { type LessonContext, valuesAt } from '../lesson/context.ts';
import { kindNamed } from '../lesson/names.ts';

/** One of a question's four answers: words, or a number of the model, times what a slip makes of it. */
export interface ConceptOption {
  readonly says?: string | undefined;
  readonly value?: string | undefined;
  readonly times?: number | undefined;
  readonly right?: true | undefined;
  readonly slip?: string | undefined;
}

/** A question with its answers; `at` is where its lesson's inputs stand. */
export interface Concept {
  readonly lesson: string;
  readonly at?: InputsOf<Model> | undefined;
  readonly ask: string;
  readonly options: readonly ConceptOption[];
}

/** The letter of an option. */
export const letterOf = (place: number): string => 'ABCD'.charAt(place);

/** A number of an option in both unit systems. */
export function optionNumber(
  context: LessonContext,
  at: Values,
  { value = '', times = 1 }: ConceptOption,
): { readonly value: number; readonly valueUs: number; readonly kind: QuantityKind } {
  const { metric, us } = valuesAt(context, at);
  const kind = kindNamed(context, 'an option', value);
  return {
    value: numberAt(metric, value) * times,
    valueUs: numberAt(us, value) * times,
    kind,
  };
}
