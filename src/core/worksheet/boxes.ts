/**
 * The boxes that a result needs: all filled and allowed, or the list of those that are not.
 * Units: those of the boxes.
 * Source: definition.
 */
import type { Box } from './form.ts';
import type { Outcome, Refusal } from './outcome.ts';
import { ready } from './outcome.ts';

/** What a box may hold. */
export type BoxLimit = 'positive' | 'notNegative' | 'finite';

/** One box: its path on the form, its value, and what it may hold (`positive` if not said). */
export type WantedBox = readonly [path: string, value: Box, limit?: BoxLimit];

const allows: Readonly<Record<BoxLimit, (value: number) => boolean>> = {
  positive: (value) => Number.isFinite(value) && value > 0,
  notNegative: (value) => Number.isFinite(value) && value >= 0,
  finite: (value) => Number.isFinite(value),
};

/** Whether a box is filled with something it may hold. */
export function isUsable(value: Box, limit: BoxLimit = 'positive'): value is number {
  return value !== undefined && allows[limit](value);
}

/** The values of the wanted boxes by name; waits for those empty, and refuses (`outOfRange`) what they may not hold. */
export function boxes<Name extends string>(
  wanted: Readonly<Record<Name, WantedBox>>,
): Outcome<Readonly<Record<Name, number>>> {
  const all = Object.entries<WantedBox>(wanted);
  const bad = all.filter(([, [, value, limit]]) => !isUsable(value, limit));
  if (bad.length === 0) {
    const values = Object.fromEntries(all.map(([name, [, value]]) => [name, value]));
    return ready(values as Record<Name, number>);
  }
  const waitsFor = [...new Set(bad.map(([, [path]]) => path))];
  const refusal = firstRefusal(bad.map(([, [, value]]) => value));
  return { ready: false, waitsFor, ...(refusal && { refusal }) };
}

function firstRefusal(values: readonly Box[]): Refusal | undefined {
  const was = values.find((value) => value !== undefined);
  if (was === undefined) return undefined;
  return { code: 'outOfRange', values: Number.isFinite(was) ? { was } : {} };
}
