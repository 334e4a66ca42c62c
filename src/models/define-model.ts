/**
 * What a model is: named inputs with kind, default, range and step, named outputs with kind, and one
 * pure function from the first to the second, total over the declared ranges.
 * Units: SI in every number; `kind` says how a person reads it.
 * Source: definition.
 */
import type { QuantityKind, UnitSystem } from '../units/kinds.ts';

/** Which ink a quantity is written in: blue for what the reader sets, red for what the band feels. */
export type Ink = 'hand' | 'steel' | 'plain';

/** How a quantity is named to a person. */
export interface QuantityLabel {
  readonly kind: QuantityKind;
  /** TeX of its symbol, for equations. */
  readonly symbol: string;
  /** Its name in plain words, lower case, for controls and screen readers. */
  readonly label: string;
}

/** A quantity that the reader sets. */
export interface InputSpec extends QuantityLabel {
  readonly default: number;
  readonly min: number;
  readonly max: number;
  /** One press of an arrow key, in SI, for each unit system. */
  readonly step: Readonly<Record<UnitSystem, number>>;
  /** Words for an input that is a choice: the value is the place in this list. */
  readonly options?: readonly string[];
}

/** A quantity that follows. */
export interface OutputSpec extends QuantityLabel {
  /** Red unless said otherwise: most of what follows is what the band feels. */
  readonly ink?: Ink;
}

/** Numbers by name: inputs and outputs together. */
export type Values = Readonly<Record<string, number>>;

/** One lesson's model. */
export interface Model {
  readonly name: string;
  readonly inputs: Readonly<Record<string, InputSpec>>;
  readonly outputs: Readonly<Record<string, OutputSpec>>;
  readonly evaluate: (inputs: Values) => Values;
}

/** The same, while it is written: `evaluate` may rely on the names of its inputs and owes each output. */
interface ModelDraft<I extends string, O extends string> {
  readonly name: string;
  readonly inputs: Readonly<Record<I, InputSpec>>;
  readonly outputs: Readonly<Record<O, OutputSpec>>;
  readonly evaluate: (inputs: Readonly<Record<I, number>>) => Readonly<Record<O, number>>;
}

/** Checks a model's names and defaults. @throws RangeError if a default lies outside its range or a name is used twice */
export function defineModel<I extends string, O extends string>(draft: ModelDraft<I, O>): Model {
  const model = draft as unknown as Model;
  for (const [name, { default: value, min, max }] of Object.entries(model.inputs)) {
    if (!(value >= min && value <= max)) {
      throw new RangeError(`${name} must be between ${min} and ${max} by default (was ${value})`);
    }
    if (name in model.outputs) throw new RangeError(`${name} must be an input or an output`);
  }
  return model;
}

/** The nearest step of a unit system, within the range: a number that is round in the reader's own unit. */
export function snapped(spec: InputSpec, system: UnitSystem, value: number): number {
  const step = spec.step[system];
  const onGrid = Number((Math.round(value / step) * step).toPrecision(12)); // without the noise of binary fractions
  return clamped(spec, onGrid);
}

/**
 * The inputs as they stand before anyone has touched them. The defaults are round in metric units; a reader of the
 * other units starts on the nearest round value of theirs.
 */
export function defaults(model: Model, system: UnitSystem = 'metric'): Values {
  return inputsAt(model, {}, system);
}

/** The defaults with some inputs set, round in a unit system. */
export function inputsAt(model: Model, at: Values, system: UnitSystem): Values {
  return Object.fromEntries(
    Object.entries(model.inputs).map(([name, spec]) => {
      const value = at[name] ?? spec.default;
      return [name, system === 'metric' ? value : snapped(spec, system, value)];
    }),
  );
}

/** Inputs and outputs together, as pages and figures read them. */
export function evaluated(model: Model, inputs: Values): Values {
  return { ...inputs, ...model.evaluate(inputs) };
}

/** The label of an input or output. @throws RangeError for a name that the model does not have */
export function quantity(model: Model, name: string): QuantityLabel {
  const labels: Readonly<Record<string, QuantityLabel>> = { ...model.inputs, ...model.outputs };
  const found = Object.hasOwn(labels, name) ? labels[name] : undefined;
  if (!found) throw new RangeError(`${name} must be an input or output of ${model.name}`);
  return found;
}

/** The ink that a quantity is written in, everywhere. */
export function inkOf(model: Model, name: string): Ink {
  return name in model.inputs ? 'hand' : (model.outputs[name]?.ink ?? 'steel');
}

/** The nearest value within the input's range. */
export function clamped(spec: InputSpec, value: number): number {
  return Math.min(spec.max, Math.max(spec.min, value));
}
