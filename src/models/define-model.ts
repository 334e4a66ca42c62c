/**
 * What a model is: named inputs (quantities with kind, default, range and step; choices with the names of their
 * options), named outputs with their kind, and one pure function from the first to the second, total over the declared
 * ranges. The names stay in the type, so that whoever reads a value by a name that is not there is told by the compiler.
 * Units: SI in every number; `kind` says how a person reads it.
 * Source: definition.
 */
import type { QuantityKind, UnitSystem } from '../units/kinds.ts';

/** The value of a quantity, or the name of what is chosen. */
export type Value = number | string;

/** Values by name: inputs, or inputs and outputs together. */
export type Values = Readonly<Record<string, Value>>;

/** A quantity that the reader sets. */
export interface QuantityInput {
  readonly kind: QuantityKind;
  readonly default: number;
  readonly min: number;
  readonly max: number;
  /** One press of an arrow key, in SI, for each unit system. */
  readonly step: Readonly<Record<UnitSystem, number>>;
}

/** One of a few things that the reader chooses, by its name. */
export interface ChoiceInput<Name extends string = string> {
  readonly options: readonly Name[];
  readonly default: Name;
  /** On which readers of US units start, where that is another one. */
  readonly us?: Name;
  /** The names in the order in which the first links counted them: frozen, whatever becomes of the options. */
  readonly counted?: readonly Name[];
}

/** What the reader sets. */
export type InputSpec = QuantityInput | ChoiceInput;

type Inputs = Readonly<Record<string, InputSpec>>;
type Outputs = Readonly<Record<string, QuantityKind>>;
type Numbers<Name extends PropertyKey> = Readonly<Record<Name, number>>;

/** What the inputs hold, from their specifications, and the other way round. */
type Held<I extends Inputs> = {
  readonly [N in keyof I]: I[N] extends { readonly options: readonly (infer Name extends string)[] }
    ? Name
    : number;
};
type SpecOf<V> = [V] extends [number]
  ? QuantityInput
  : [V] extends [string]
    ? ChoiceInput<V>
    : InputSpec;

/** One lesson's model, by the values of its inputs and the names of its outputs. */
export interface Model<I extends Values = Values, O extends string = string> {
  readonly name: string;
  readonly inputs: { readonly [N in keyof I]: SpecOf<I[N]> };
  readonly outputs: Readonly<Record<O, QuantityKind>>;
  /** The outputs that are the same whatever the reader sets. */
  readonly constants: Numbers<string>;
  /** The other outputs. */
  evaluate(inputs: I): Numbers<string>;
}

/** What a model's inputs hold. */
export type InputsOf<M extends Model> = Parameters<M['evaluate']>[0];

/** A model's inputs and outputs together, each by its name. */
export type ValuesOf<M extends Model> = string extends keyof M['outputs']
  ? Values
  : InputsOf<M> & Numbers<keyof M['outputs']>;

/** The names of a model's inputs and outputs that are numbers. */
export type QuantityOf<M extends Model> = keyof {
  [N in keyof ValuesOf<M> as ValuesOf<M>[N] extends number ? N : never]: N;
} &
  string;

/** The names of a model's inputs that are numbers. */
export type QuantityInputOf<M extends Model> = QuantityOf<M> & keyof InputsOf<M>;

/** A model while it is written: `evaluate` may rely on the names of its inputs and owes each output that is no constant. */
interface ModelDraft<I extends Inputs, O extends Outputs, C extends Numbers<string>> {
  readonly name: string;
  readonly inputs: I;
  readonly outputs: O;
  readonly constants?: C & Readonly<Record<Exclude<keyof C, keyof O>, never>>;
  readonly evaluate: (inputs: Held<I>) => Numbers<Exclude<keyof O, keyof C>>;
}

/** Whether an input is a choice. */
export const isChoice = (spec: InputSpec): spec is ChoiceInput => 'options' in spec;

/** What an input starts on, before it is made round. */
const startOf = (spec: InputSpec, system: UnitSystem): Value =>
  (isChoice(spec) && system === 'us' && spec.us) || spec.default;

function checkDefault(name: string, spec: InputSpec): void {
  const { default: start } = spec;
  if (isChoice(spec)) {
    if (spec.options.includes(spec.default)) return;
    throw new RangeError(`${name} must be one of its options by default (was ${start})`);
  }
  const { min, max } = spec;
  if (spec.default >= min && spec.default <= max) return;
  throw new RangeError(`${name} must be between ${min} and ${max} by default (was ${start})`);
}

/** Checks a model's names and defaults. @throws RangeError if a default is not among what can be set, or a name is used twice */
export function defineModel<
  const I extends Inputs,
  const O extends Outputs,
  C extends Numbers<string> = Numbers<never>,
>(draft: ModelDraft<I, O, C>): Model<Held<I>, keyof O & string> {
  for (const [name, spec] of Object.entries<InputSpec>(draft.inputs)) {
    checkDefault(name, spec);
    if (name in draft.outputs) throw new RangeError(`${name} must be an input or an output`);
  }
  return { constants: {}, ...draft } as unknown as Model<Held<I>, keyof O & string>;
}

/** The nearest value within the input's range. */
export function clamped(spec: QuantityInput, value: number): number {
  return Math.min(spec.max, Math.max(spec.min, value));
}

/** The nearest step of a unit system, within the range: a number that is round in the reader's own unit. */
export function snapped(spec: QuantityInput, system: UnitSystem, value: number): number {
  const step = spec.step[system];
  const onGrid = Number((Math.round(value / step) * step).toPrecision(12)); // without the noise of binary fractions
  return clamped(spec, onGrid);
}

/** The inputs with some of them set, round in a unit system; the others at their defaults, which are round in metric units, a choice at what readers of that system start on. */
export function inputsAt<M extends Model>(
  model: M,
  at: Partial<InputsOf<M>>,
  system: UnitSystem,
): InputsOf<M> {
  const set: Readonly<Record<string, Value | undefined>> = at;
  const inputs = Object.entries<InputSpec>(model.inputs).map(([name, spec]) => {
    const value = set[name] ?? startOf(spec, system);
    const round = system !== 'metric' && typeof value === 'number' && !isChoice(spec);
    return [name, round ? snapped(spec, system, value) : value];
  });
  return Object.fromEntries(inputs) as InputsOf<M>;
}

/** The inputs as they stand before anyone has touched them: round in the reader's own units. */
export function defaults<M extends Model>(model: M, system: UnitSystem = 'metric'): InputsOf<M> {
  return inputsAt(model, {}, system);
}

/** Inputs and outputs together, as pages and figures read them. */
export function evaluated<M extends Model>(model: M, inputs: InputsOf<M>): ValuesOf<M> {
  return { ...model.constants, ...inputs, ...model.evaluate(inputs) } as ValuesOf<M>;
}

/** What a quantity that the reader sets may be. @throws RangeError for a name that is no such input */
export function quantitySpec(model: Model, name: string): QuantityInput {
  const spec = Object.hasOwn(model.inputs, name) ? model.inputs[name] : undefined;
  if (spec && !isChoice(spec)) return spec;
  throw new RangeError(`${name} must be a quantity that is set in ${model.name}`);
}

/** The kind of an input or output. @throws RangeError for a name that is no quantity of the model */
export function kindOf(model: Model, name: string): QuantityKind {
  const input = Object.hasOwn(model.inputs, name) ? model.inputs[name] : undefined;
  if (input && !isChoice(input)) return input.kind;
  const output = Object.hasOwn(model.outputs, name) ? model.outputs[name] : undefined;
  if (!output) throw new RangeError(`${name} must be a quantity of ${model.name}`);
  return output;
}

/** A quantity among values by name. @throws RangeError for a name that no number has */
export function numberAt(values: Values, name: string): number {
  const value = Object.hasOwn(values, name) ? values[name] : undefined;
  if (typeof value === 'number') return value;
  throw new RangeError(`${name} must be a quantity of the model`);
}
