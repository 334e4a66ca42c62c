/**
 * Where the inputs of a model can be pushed: each quantity to either end of its range, each choice to each of its
 * options. Of inputs that leave a picture as it is only the default is taken, or ten inputs would have thousands of corners.
 */
import {
  defaults,
  type InputSpec,
  isChoice,
  type Model,
  type Value,
  type Values,
} from '../../src/models/define-model.ts';

/** The ends of an input: of a range, or every option of a choice. */
const endsOf = (spec: InputSpec): readonly Value[] =>
  isChoice(spec) ? spec.options : [spec.min, spec.max];

/** Every combination of the ends of some inputs, the others as they are given. */
function combined(model: Model, names: readonly string[], others: Values): readonly Values[] {
  return names.reduce<readonly Values[]>(
    (all, name) => {
      const spec = model.inputs[name];
      if (!spec) throw new Error(`${model.name} has no input ${name}`);
      return all.flatMap((inputs) => endsOf(spec).map((end) => ({ ...inputs, [name]: end })));
    },
    [others],
  );
}

/** The inputs whose ends, one at a time, show in a picture; `draw` gives all of it as text. */
function shownBy(model: Model, from: Values, draw: (inputs: Values) => string): readonly string[] {
  const atRest = draw(from);
  return Object.entries(model.inputs)
    .filter(([name, spec]) => endsOf(spec).some((end) => draw({ ...from, [name]: end }) !== atRest))
    .map(([name]) => name);
}

/**
 * All corners of a picture: every option of its choices, and for each of them every corner of the quantities that then
 * show in it.
 */
export function cornersOf(model: Model, draw: (inputs: Values) => string): readonly Values[] {
  const choice = (name: string) => isChoice(model.inputs[name] as InputSpec);
  const start = defaults(model);
  const chosen = combined(model, shownBy(model, start, draw).filter(choice), start);
  return chosen.flatMap((from) =>
    combined(
      model,
      shownBy(model, from, draw).filter((name) => !choice(name)),
      from,
    ),
  );
}
