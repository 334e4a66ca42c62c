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
  positive: (value) => value > 0,
  notNegative: (value) => value >= 0,
  finite: (value) => !Number.isNaN(value),
};

// In SI nothing of a mill is smaller or larger than this but 0, and within it no sum overflows.
const least = 1e-9;
const most = 1e13;

function isWithinReach(value: number): boolean {
  return value === 0 || (Math.abs(value) >= least && Math.abs(value) <= most);
}

/** Whether an input is known, something it may be, and not too far out to reckon with. */
export function isUsable(value: InputValue, limit: InputLimit = 'positive'): value is number {
  return value !== undefined && allows[limit](value) && isWithinReach(value);
}

/**
 * The values of the wanted inputs by name; waits for those unknown, and refuses what they may not be
 * (`outOfRange`) or what is too far out (`beyondNumbers`).
 */
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
  const refusal = firstRefusal(bad.map(([, wanted]) => wanted));
  return { ready: false, waitsFor, ...(refusal && { refusal }) };
}

function firstRefusal(wanted: readonly WantedInput[]): Refusal | undefined {
  for (const [, was, limit = 'positive'] of wanted) {
    if (was === undefined) continue;
    if (allows[limit](was)) return { code: 'beyondNumbers', values: {} };
    return { code: 'outOfRange', values: Number.isFinite(was) ? { was } : {} };
  }
  return undefined;
}
