/** New plain data that keeps the identity of every part of the old in which nothing has changed. */

type Holder = Record<string, unknown>;

const isHolder = (value: unknown): value is Holder =>
  typeof value === 'object' &&
  value !== null &&
  (Array.isArray(value) || Object.getPrototypeOf(value) === Object.prototype);

const copied = (value: Holder): Holder =>
  Array.isArray(value) ? (value.slice() as unknown as Holder) : { ...value };

/** `next`, with every part that is as it was in `last` taken from there; `last` itself where all is. Plain data only. */
export function sharing<Value>(last: unknown, next: Value): Value {
  if (Object.is(last, next)) return next;
  if (!isHolder(last) || !isHolder(next) || Array.isArray(last) !== Array.isArray(next))
    return next;
  const names = Object.keys(next);
  let isSame = names.length === Object.keys(last).length;
  let result: Holder = next;
  for (const name of names) {
    const part = sharing(last[name], next[name]);
    isSame &&= name in last && Object.is(part, last[name]);
    if (Object.is(part, next[name])) continue;
    if (result === next) result = copied(next);
    result[name] = part;
  }
  return (isSame ? last : result) as Value;
}
