/**
 * The published cases as they are kept in data/: what a source prints, with its inputs and how it was seen.
 * Units: those of the source, named in each case.
 */
import published from './data/published.json' with { type: 'json' };

/** One case; its parts differ from source to source and are read by path. */
export interface PublishedCase {
  readonly id: string;
  readonly topic: string;
  readonly citation: string;
  readonly inputs: unknown;
  readonly expected: unknown;
  readonly verified: string;
}

/** Every case of the file. */
export const publishedCases = published as unknown as readonly PublishedCase[];

/** Keys from the outside in, written `outer > inner`; a place in a list is its number. */
export function valueAt(value: unknown, path: string): unknown {
  return path
    .split(' > ')
    .reduce((part, key) => (part as Readonly<Record<string, unknown>> | undefined)?.[key], value);
}

/** The number at a path. @throws Error where there is none */
export function numberAt(value: unknown, path: string): number {
  const found = valueAt(value, path);
  if (typeof found !== 'number') throw new Error(`no number at ${path}`);
  return found;
}

/** The list of numbers at a path. @throws Error where there is none */
export function numbersAt(value: unknown, path: string): readonly number[] {
  const found = valueAt(value, path);
  if (!Array.isArray(found) || !found.every((each) => typeof each === 'number'))
    throw new Error(`no list of numbers at ${path}`);
  return found;
}

/** A reader of one case's inputs: `n('F_N')`. */
export const inputReader =
  ({ inputs }: Pick<PublishedCase, 'inputs'>) =>
  (path: string): number =>
    numberAt(inputs, path);

/** The paths of all numbers inside a value. */
export function numberPaths(value: unknown, path: readonly string[] = []): readonly string[] {
  if (typeof value === 'number') return [path.join(' > ')];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) => numberPaths(part, [...path, key]));
}
