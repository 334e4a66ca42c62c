/**
 * The one small store of a lesson page: inputs as signals (quantities in SI, choices by name), everything else computed
 * from them.
 * Units: SI.
 */
import { computed, effect, type ReadonlySignal, type Signal, signal } from '@preact/signals-core';
import {
  clamped,
  evaluated,
  type InputSpec,
  inputsAt,
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
  /** What the page itself sets, where that is not all at the model's defaults: a worked example. */
  readonly own: Values;
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

/** Where a page starts, round in a unit system. */
export function startInputs({ model, own }: Pick<PageStore, 'model' | 'own'>, system: UnitSystem) {
  return inputsAt(model, own, system);
}

/** Inputs that nobody has touched go to the round numbers of the unit system that the reader switches to. */
function followUnits(page: Pick<PageStore, 'model' | 'own' | 'inputs'>): void {
  const { inputs } = page;
  let before = unitSystem.peek();
  effect(() => {
    const now = unitSystem.value;
    const [old, round] = [startInputs(page, before), startInputs(page, now)];
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

/** The inputs with which a page opens: a link's, or where none of them could be used, its own. */
export function opened(page: Pick<PageStore, 'model' | 'own'>, link: Values): Values {
  return Object.keys(link).length === 0 ? startInputs(page, unitSystem.peek()) : link;
}

/**
 * A store at a link's inputs; names that the model does not have are left out, the rest are at their default. Without
 * a link everything starts where the page does, on round numbers of the reader's units.
 */
export function createPageStore(model: Model, link: Values, own: Values = {}): PageStore {
  const untouched = opened({ model, own }, link);
  const inputs = Object.fromEntries(
    Object.entries(model.inputs).map(([name, spec]) => [
      name,
      signal(allowed(spec, untouched[name] ?? spec.default) ?? spec.default),
    ]),
  );
  const current = () =>
    Object.fromEntries(Object.entries(inputs).map(([name, input]) => [name, input.value]));
  const values = computed(() => evaluated(model, current()));
  followUnits({ model, own, inputs });
  const settled = rested(values);
  return { model, inputs, own, values, settled, system: unitSystem, guess: signal(undefined) };
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

/** Puts every input back to the number that the page starts with. */
export function resetInputs(store: PageStore): void {
  const round = startInputs(store, store.system.peek());
  for (const [name, value] of Object.entries(round)) setInput(store, name, value);
}
