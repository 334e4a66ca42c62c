/**
 * The names of everything on the form: patterns such as `readings.*.dial`, and paths with the numbers of rows filled
 * in, such as `readings.3.dial`. A misspelt path stops the type check; one from outside is looked up.
 * Units: none.
 * Source: definition.
 */
import type { Field, QuantityField, WordsField } from './field.ts';
import { FIELDS } from './fields.ts';
import { LISTS, type List } from './lists.ts';

type Rows<Pattern extends string> = Pattern extends `${infer Before}.*${infer After}`
  ? `${Before}.${number}${Rows<After>}`
  : Pattern;

/** A box or a choice, row numbers left open. */
export type FieldPattern = keyof typeof FIELDS;

type PatternOf<Sort> = {
  [Pattern in FieldPattern]: (typeof FIELDS)[Pattern] extends Sort ? Pattern : never;
}[FieldPattern];

/** The path of a choice. */
export type ChoicePath = PatternOf<{ readonly options: object }>;

/** The path of a box, for a quantity or for words. */
export type BoxPath = Rows<PatternOf<QuantityField | WordsField>>;

/** The path of anything that can be filled in. */
export type FieldPath = BoxPath | ChoicePath;

/** A part of the form that repeats, row numbers left open. */
export type ListPattern = keyof typeof LISTS;

/** The path of a part that repeats, as `readings` or `ways.2.readings`. */
export type ListPath = Rows<ListPattern>;

type Under<Part extends string, Pattern extends string> = Pattern extends `${Part}.${infer Name}`
  ? Name extends `${string}.${string}`
    ? never
    : Name
  : never;

/** The quantities right under a part of the form: `bodyWidth` under `band`. */
export type QuantityUnder<Part extends string> = Under<Part, PatternOf<QuantityField>>;

/** The cells of one row of a list. */
export type CellOf<Pattern extends ListPattern> = Under<`${Pattern}.*`, FieldPattern>;

/** What may be chosen. */
export type OptionOf<Path extends ChoicePath> = keyof (typeof FIELDS)[Path]['options'];

/** All patterns in the order of the form. */
export const PATTERNS = Object.keys(FIELDS) as readonly FieldPattern[];

/** A path with its row numbers left open. */
export const patternOf = (path: string): string => path.replace(/\.\d+(?=\.|$)/g, '.*');

/** Every list that a path runs through, with the number of its row there. */
export function rowsOnTheWay(path: string): readonly (readonly [list: string, row: string])[] {
  return [...path.matchAll(/\.(\d+)(?=\.|$)/g)].map(
    ({ index, 1: row = '' }) => [path.slice(0, index), row] as const,
  );
}

/** Whether every row number of a path is within what its list may have, written as we write it. */
function isWithinLists(path: string): boolean {
  return rowsOnTheWay(path).every(([list, row]) => {
    const pattern = patternOf(list);
    const most = Object.hasOwn(LISTS, pattern) ? LISTS[pattern as ListPattern].most : 0;
    return String(Number(row)) === row && Number(row) < most;
  });
}

const found = new Map<string, Field>(); // as many as the form has boxes

function lookedUp(path: string): Field | undefined {
  const pattern = patternOf(path);
  const isKnown = Object.hasOwn(FIELDS, pattern) && !path.includes('*') && isWithinLists(path);
  return isKnown ? FIELDS[pattern as FieldPattern] : undefined;
}

/** The field at a path from anywhere; undefined for what is no field, or beyond the rows that a list may have. */
export function findField(path: string): Field | undefined {
  const field = found.get(path) ?? lookedUp(path);
  if (field) found.set(path, field);
  return field;
}

/** Whether a text is the path of a field. */
export const isFieldPath = (path: string): path is FieldPath => findField(path) !== undefined;

/** The field at a path. */
export const fieldAt = (path: FieldPath): Field => FIELDS[patternOf(path) as FieldPattern];

const namesOf = new Map<string, readonly string[]>(); // by part, once asked

/** The names right under a part of the form, in their order. */
export function namesUnder(part: string): readonly string[] {
  const start = `${patternOf(part)}.`;
  const known = namesOf.get(start);
  if (known) return known;
  const names = PATTERNS.filter((pattern) => pattern.startsWith(start))
    .map((pattern) => pattern.slice(start.length))
    .filter((name) => !name.includes('.'));
  namesOf.set(start, names);
  return names;
}

/** The cells of a row of a list. */
export const cellsOf = (list: ListPath): readonly string[] => namesUnder(`${list}.0`);

/** The most rows that a list may have. */
export const mostRows = (list: ListPath): number => LISTS[patternOf(list) as ListPattern].most;

/** What a row of a list is called before its number; undefined where rows have none. */
export function rowWord(list: string): string | undefined {
  const pattern = patternOf(list);
  return Object.hasOwn(LISTS, pattern) ? (LISTS[pattern as ListPattern] as List).row : undefined;
}
