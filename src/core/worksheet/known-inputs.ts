/**
 * The inputs that a result needs: all known and allowed, or the list of those that are not.
 * Units: those of the inputs.
 * Source: definition.
 */
import type { InputValue } from './inputs.ts';
import type { Outcome, Refusal } from './outcome.ts';
import { ready } from './outcome.ts';
import type { WorksheetPath } from './path.ts';

/** What an input may be. */
export type InputLimit = 'positive' | 'notNegative' | 'finite';

/** One input: its name, its value, and what it may be (`positive` if not said). */
export type WantedInput = readonly [path: WorksheetPath, value: InputValue, limit?: InputLimit];

const allows: Readonly<Record<InputLimit, (value: number) => boolean>> = {
  positive: (value) => Number.isFinite(value) && value > 0,
  notNegative: (value) => Number.isFinite(value) && value >= 0,
  finite: (value) => Number.isFinite(value),
};

/** Whether an input is known and something it may be. */
export function isUsable(value: InputValue, limit: InputLimit = 'positive'): value is number {
  return value !== undefined && allows[limit](value);
}

/** The values of the wanted inputs by name; waits for those unknown, and refuses (`outOfRange`) what they may not be. */
export function knownInputs<Name extends string>(
  wanted: Readonly<Record<Name, WantedInput>>,
): Outcome<Readonly<Record<Name, number>>> {
  const all = Object.entries<WantedInput>(wanted);
  const bad = all.filter(([, [, value, limit]]) => !isUsable(value, limit));
  if (bad.length === 0) {
    const values = Object.fromEntries(all.map(([name, [, value]]) => [name, value]));
    return ready(values as Record<Name, number>);
  }
  const waitsFor = [...new Set(bad.map(([, [path]]) => path))];
  const refusal = firstRefusal(bad.map(([, [, value]]) => value));
  return { ready: false, waitsFor, ...(refusal && { refusal }) };
}

function firstRefusal(values: readonly InputValue[]): Refusal | undefined {
  const was = values.find((value) => value !== undefined);
  if (was === undefined) return undefined;
  return { code: 'outOfRange', values: Number.isFinite(was) ? { was } : {} };
}
