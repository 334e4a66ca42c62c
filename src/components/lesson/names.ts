/**
 * Names that a lesson's words and questions write, looked up in its model. The words import nothing, so no compiler
 * reads them: a misspelt name stops the build here, with the file that has it.
 * Units: SI in the values.
 */
import {
  type InputSpec,
  isChoice,
  kindOf,
  type Model,
  type Value,
  type Values,
} from '../../models/define-model.ts';
import { type ProblemTemplate, pieces } from '../../models/problem.ts';
import { inkOf, labelOf, type ModelWords } from '../../models/words.ts';

/** Where a name stands: its file, and what in it. */
export interface NamePlace {
  readonly file: string;
  readonly model: Model;
}

function refuse({ file, model }: NamePlace, where: string, needs: string, name: unknown): never {
  throw new RangeError(`${file}: ${where} must be ${needs} of ${model.name} (was ${name})`);
}

/** The kind of a quantity by name. @throws RangeError that names the file, for a name that is none of the model's */
export function kindNamed(
  place: NamePlace,
  where: string,
  name: string,
): ReturnType<typeof kindOf> {
  const { inputs, outputs } = place.model;
  const spec = Object.hasOwn(inputs, name) ? inputs[name] : undefined;
  const isQuantity = spec ? !isChoice(spec) : Object.hasOwn(outputs, name);
  return isQuantity ? kindOf(place.model, name) : refuse(place, where, 'a quantity', name);
}

/** Kind, ink, symbol and label of a quantity by name. @throws RangeError that names the file */
export function quantityNamed(
  place: NamePlace & { readonly words: ModelWords },
  where: string,
  name: string,
) {
  const kind = kindNamed(place, where, name);
  return { kind, ink: inkOf(place.words, name), ...labelOf(place.words, name) };
}

/** An input by name. @throws RangeError that names the file */
export function inputNamed(place: NamePlace, where: string, name: string): InputSpec {
  const { inputs } = place.model;
  const spec = Object.hasOwn(inputs, name) ? inputs[name] : undefined;
  return spec ?? refuse(place, where, 'an input', name);
}

const holds = (spec: InputSpec, value: Value) =>
  isChoice(spec)
    ? spec.options.some((option) => option === value)
    : Number(value) >= spec.min && Number(value) <= spec.max;

/** Inputs with their values, as given. @throws RangeError that names the file, for a name or a value that is none of the model's */
export function inputsNamed(place: NamePlace, where: string, at: Values): Values {
  for (const [name, value] of Object.entries(at)) {
    if (!holds(inputNamed(place, where, name), value)) {
      refuse(place, `${where} ${name}`, 'a value', value);
    }
  }
  return at;
}

/** Checks every name in a question. @throws RangeError that names the file and the question */
export function checkProblem(file: string, model: Model, template: ProblemTemplate): void {
  const place = { file: `${file}: ${template.id}`, model };
  const check = (part: string, text: string) => {
    for (const piece of pieces(text)) {
      if ('name' in piece) kindNamed(place, part, piece.name);
      else if (/[{}]/.test(piece.text)) refuse(place, part, 'words and {names}', piece.text);
    }
  };
  check('ask', template.ask);
  check('because', template.because);
  for (const { says } of template.slips) check('words of a slip', says);
  kindNamed(place, 'answer', template.answer);
  inputsNamed(place, 'fixed', template.fixed ?? {});
  for (const [name, { from, to }] of Object.entries(template.draw)) {
    for (const end of [from, to]) inputsNamed(place, 'draw', { [name]: end });
  }
  for (const { answer = template.answer, inputsTimes = {} } of template.slips) {
    kindNamed(place, 'answer of a slip', answer);
    for (const name of Object.keys(inputsTimes)) {
      inputNamed(place, 'inputsTimes', name);
      kindNamed(place, 'inputsTimes', name);
    }
  }
}
