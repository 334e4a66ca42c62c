/** New plain data that keeps the identity of every part of the old in which nothing has changed. */

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
