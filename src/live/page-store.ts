/**
 * The one small store of a lesson page: inputs as signals in SI, everything else computed from them.
 * Units: SI.
 */
import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals-core';
import { clamped, evaluated, type Model, type Values } from '../models/define-model.ts';
import type { UnitSystem } from '../units/kinds.ts';
import { unitSystem } from './unit-system.ts';

/** What the elements of a page share. */
export interface PageStore {
  readonly model: Model;
  readonly inputs: Readonly<Record<string, Signal<number>>>;
  readonly values: ReadonlySignal<Values>;
  readonly system: ReadonlySignal<UnitSystem>;
  /** What the reader guessed, once committed. */
  readonly guess: Signal<number | undefined>;
}

/** A store at the given inputs; names that the model does not have are left out, the rest start at their default. */
export function createPageStore(model: Model, start: Values): PageStore {
  const inputs = Object.fromEntries(
    Object.entries(model.inputs).map(([name, spec]) => [
      name,
      signal(clamped(spec, start[name] ?? spec.default)),
    ]),
  );
  const current = () =>
    Object.fromEntries(Object.entries(inputs).map(([name, input]) => [name, input.value]));
  const values = computed(() => evaluated(model, current()));
  return { model, inputs, values, system: unitSystem, guess: signal(undefined) };
}

/** Sets one input, kept within its range; unknown names and what is not a number are ignored. */
export function setInput(store: PageStore, name: string, value: number): void {
  const spec = store.model.inputs[name];
  const input = store.inputs[name];
  if (spec && input && Number.isFinite(value)) input.value = clamped(spec, value);
}

/** Puts every input back to the number that the lesson starts with. */
export function resetInputs(store: PageStore): void {
  for (const [name, spec] of Object.entries(store.model.inputs))
    setInput(store, name, spec.default);
}
