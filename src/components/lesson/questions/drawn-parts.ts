/** A question as the build draws it: its words and its numbers in both unit systems. */
import { kindOf, type Model, numberAt } from '../../../models/define-model.ts';
import { drawProblem, type ProblemTemplate, pieces } from '../../../models/problem.ts';
import type { QuantityKind } from '../../../units/kinds.ts';

/** Words, or a number with the value that readers of either unit system see. */
export type QuestionPart =
  | { readonly text: string }
  | {
      readonly value: number; // SI
      readonly valueUs: number; // SI, round in US units
      readonly kind: QuantityKind;
      readonly digits?: number;
    };

/** The question and the reason for its answer, for a seed. */
export function questionParts(
  template: ProblemTemplate,
  model: Model,
  seed: number,
): Readonly<Record<'ask' | 'because', readonly QuestionPart[]>> {
  const problem = drawProblem(template, model, seed);
  const problemUs = drawProblem(template, model, seed, 'us');
  const partsOf = (text: string) =>
    pieces(text).map((piece) =>
      'text' in piece
        ? piece
        : {
            value: numberAt(problem.values, piece.name),
            valueUs: numberAt(problemUs.values, piece.name),
            kind: kindOf(model, piece.name),
            ...(piece.digits && { digits: piece.digits }),
          },
    );
  return { ask: partsOf(template.ask), because: partsOf(template.because) };
}
