/** Values that keep their identity while nothing in them changes, so that what hangs on them is not done again. */
import { computed, type ReadonlySignal } from '@preact/signals-core';

const isHolder = (value: unknown): value is Record<string, unknown> =>
  Array.isArray(value) || Object.prototype.toString.call(value) === '[object Object]';

/** `next`, with every part that is as it was in `last` taken from there; `last` itself where all is. Plain data only. */
export function sharing<Value>(last: unknown, next: Value): Value {
  if (Object.is(last, next)) return next;
  if (!isHolder(last) || !isHolder(next) || Array.isArray(last) !== Array.isArray(next))
    return next;
  const names = Object.keys(next);
  const parts = names.map((name) => [name, sharing(last[name], next[name])] as const);
  const isSame =
    names.length === Object.keys(last).length &&
    parts.every(([name, part]) => name in last && Object.is(part, last[name]));
  if (isSame) return last as Value;
  return (Array.isArray(next) ? parts.map(([, part]) => part) : Object.fromEntries(parts)) as Value;
}

/** A computed value that keeps its identity, and that of its parts, while they say the same. */
export function lasting<Value>(compute: () => Value): ReadonlySignal<Value> {
  let last: Value | undefined;
  return computed(() => {
    last = sharing(last, compute());
    return last;
  });
}

/** Computed values by name, each made when it is first asked for. */
export function selector(): <Value>(name: string, compute: () => Value) => Value {
  const known = new Map<string, ReadonlySignal<unknown>>();
  return <Value>(name: string, compute: () => Value) => {
    const found = known.get(name) ?? computed(compute);
    known.set(name, found);
    return found.value as Value;
  };
}
