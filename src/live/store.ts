/**
 * The one small store of a lesson page: inputs as signals (quantities in SI, choices by name), everything else computed
 * from them.
 * Units: SI.
 */
import { computed, effect, type ReadonlySignal, type Signal, signal } from '@preact/signals-core';
import {
  clamped,
  defaults,
  evaluated,
  type InputSpec,
  isChoice,
  type Model,
  type Value,
  type Values,
} from '../models/define-model.ts';
import type { UnitSystem } from '../units/kinds.ts';
import { unitSystem } from './unit-system.ts';

/** What the elements of a page share. */
export interface PageStore {
  readonly model: Model;
  readonly inputs: Readonly<Record<string, Signal<Value>>>;
  readonly values: ReadonlySignal<Values>;
  /** The same once they rest, for what need not follow every tick of a slider. */
  readonly settled: ReadonlySignal<Values>;
  readonly system: ReadonlySignal<UnitSystem>;
  /** What the reader guessed, once committed. */
  readonly guess: Signal<number | undefined>;
}

const REST = 150; // ms

/** Follows another signal once that has rested. */
function rested<T>(source: ReadonlySignal<T>): ReadonlySignal<T> {
  const settled = signal(source.peek());
  let resting: ReturnType<typeof setTimeout> | undefined;
  effect(() => {
    const now = source.value;
    clearTimeout(resting);
    resting = setTimeout(() => {
      settled.value = now;
    }, REST);
  });
  return settled;
}

/** Inputs that nobody has touched go to the round numbers of the unit system that the reader switches to. */
function followUnits(model: Model, inputs: PageStore['inputs']): void {
  let before = unitSystem.peek();
  effect(() => {
    const now = unitSystem.value;
    const [old, round] = [defaults(model, before), defaults(model, now)];
    before = now;
    const untouched = Object.entries(inputs).every(([name, input]) => input.peek() === old[name]);
    if (!untouched) return;
    for (const [name, input] of Object.entries(inputs)) input.value = round[name] ?? input.peek();
  });
}

/** What an input may hold: a quantity within its range, a choice among its options; otherwise undefined. */
function allowed(spec: InputSpec, value: Value): Value | undefined {
  if (isChoice(spec)) return spec.options.find((option) => option === value);
  return Number.isFinite(value) ? clamped(spec, Number(value)) : undefined;
}

/**
 * A store at a link's inputs; names that the model does not have are left out, the rest are at their default. Without
 * a link everything starts on round numbers of the reader's units.
 */
export function createPageStore(model: Model, start: Values): PageStore {
  const untouched = Object.keys(start).length === 0 ? defaults(model, unitSystem.peek()) : start;
  const inputs = Object.fromEntries(
    Object.entries(model.inputs).map(([name, spec]) => [
      name,
      signal(allowed(spec, untouched[name] ?? spec.default) ?? spec.default),
    ]),
  );
  const current = () =>
    Object.fromEntries(Object.entries(inputs).map(([name, input]) => [name, input.value]));
  const values = computed(() => evaluated(model, current()));
  followUnits(model, inputs);
  const settled = rested(values);
  return { model, inputs, values, settled, system: unitSystem, guess: signal(undefined) };
}

/** Sets one input, kept within what it may hold; unknown names and what is neither number nor option are ignored. */
export function setInput(store: PageStore, name: string, value: Value): void {
  const spec = store.model.inputs[name];
  const input = store.inputs[name];
  const next = spec && allowed(spec, value);
  if (input && next !== undefined) input.value = next;
}

/** An input that is a quantity, with its specification; undefined for any other name. */
export function quantityInput({ model, inputs }: PageStore, name: string) {
  const spec = model.inputs[name];
  const value = inputs[name];
  if (!spec || !value || isChoice(spec)) return undefined;
  return { spec, value: value as Signal<number> };
}

/** Puts every input back to the number that the lesson starts with. */
export function resetInputs(store: PageStore): void {
  const round = defaults(store.model, store.system.peek());
  for (const [name, value] of Object.entries(round)) setInput(store, name, value);
}
