/** Values that keep their identity while nothing in them changes, so that what hangs on them is not done again. */
import { computed, type ReadonlySignal } from '@preact/signals-core';
import { sharing } from './sharing.ts';

/** A computed value that keeps its identity, and that of its parts, while they say the same. */
export function lasting<Value>(compute: () => Value): ReadonlySignal<Value> {
  let last: Value | undefined;
  return computed(() => {
    last = sharing(last, compute());
    return last;
  });
}

/** Lasting values by name, each made when it is first asked for. */
export function selector(): <Value>(name: string, compute: () => Value) => Value {
  const known = new Map<string, ReadonlySignal<unknown>>();
  return <Value>(name: string, compute: () => Value) => {
    const found = known.get(name) ?? lasting(compute);
    known.set(name, found);
    return found.value as Value;
  };
}
