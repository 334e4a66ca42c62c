/**
 * The door of the core: arguments are checked where they come in, and a refusal reads
 * `NAME must be CONDITION UNIT (was VALUE)`.
 * Units: whatever the caller states; the text only repeats it.
 * Source: definition.
 */

/** Refuses a value in the one form every message of the core has. @throws RangeError always */
export function refuse(
  name: string,
  condition: string,
  unit: string,
  value: number | string,
): never {
  const unitText = unit === '' ? '' : ` ${unit}`;
  throw new RangeError(`${name} must be ${condition}${unitText} (was ${value})`);
}

/** Passes any real number. @throws RangeError if the value is NaN or infinite */
export function assertFinite(name: string, value: number, unit = ''): void {
  if (!Number.isFinite(value)) {
    refuse(name, unit === '' ? 'a finite number' : 'a finite number of', unit, value);
  }
}

/** Passes finite values above zero. @throws RangeError otherwise */
export function assertPositive(name: string, value: number, unit = ''): void {
  if (!(Number.isFinite(value) && value > 0)) refuse(name, 'above 0', unit, value);
}

/** Passes finite values of at least `low`. @throws RangeError otherwise */
export function assertAtLeast(name: string, value: number, low: number, unit = ''): void {
  if (!(Number.isFinite(value) && value >= low)) refuse(name, `at least ${low}`, unit, value);
}

/** Passes `low ≤ value ≤ high`. @throws RangeError otherwise */
export function assertBetween(
  name: string,
  value: number,
  low: number,
  high: number,
  unit = '',
): void {
  if (!(value >= low && value <= high)) refuse(name, `between ${low} and ${high}`, unit, value);
}

/** Passes `value < limit`; `limit` may be another argument's value. @throws RangeError otherwise */
export function assertBelow(name: string, value: number, limit: number, unit = ''): void {
  if (!(value < limit)) refuse(name, `below ${limit}`, unit, value);
}

/** Passes whole numbers with `low ≤ value ≤ high`. @throws RangeError otherwise */
export function assertWhole(name: string, value: number, low: number, high: number): void {
  if (!(Number.isInteger(value) && value >= low && value <= high))
    refuse(name, `a whole number between ${low} and ${high}`, '', value);
}

/** Passes a list of `count` finite values; a refusal names the place, counted from 0. @throws RangeError otherwise */
export function assertList(
  name: string,
  values: ArrayLike<number>,
  count: number,
  unit = '',
): void {
  if (values.length !== count) refuse(`number of ${name}`, `${count}`, '', values.length);
  for (let i = 0; i < count; i += 1) {
    const value = values[i] as number;
    if (!Number.isFinite(value)) assertFinite(`${name}[${i}]`, value, unit);
  }
}

/** Passes `value ≤ limit`; `limit` may be another argument's value. @throws RangeError otherwise */
export function assertAtMost(name: string, value: number, limit: number, unit = ''): void {
  if (!(value <= limit)) refuse(name, `at most ${limit}`, unit, value);
}
