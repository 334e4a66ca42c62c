/**
 * What is typed and chosen on a sheet: one text for each path. What is empty, or chosen as at the start, is not
 * there. This is what is kept and shared; every change gives a new one.
 * Units: none; a number typed without a unit is in the unit that its box shows.
 * Source: definition.
 */
import type { ChoiceField } from './field.ts';
import {
  type ChoicePath,
  cellsOf,
  type FieldPath,
  fieldAt,
  findField,
  type ListPath,
  mostRows,
  type OptionOf,
} from './paths.ts';

/** The texts by path. */
export type Typed = Readonly<Partial<Record<FieldPath, string>>>;

/** A sheet with nothing typed. */
export const blank: Typed = {};

/** All that is typed, path by path. */
export const entriesOf = (typed: Typed) => Object.entries(typed) as readonly [FieldPath, string][];

const sheetOf = (entries: readonly (readonly [string, string])[]): Typed =>
  Object.fromEntries(entries);

/** What is typed at a path; empty where nothing is. */
export const typedAt = (typed: Typed, path: FieldPath): string => typed[path] ?? '';

/** What is chosen at a path. */
export function chosenAt<Path extends ChoicePath>(typed: Typed, path: Path): OptionOf<Path> {
  const { options } = fieldAt(path) as ChoiceField;
  return (typed[path] ?? Object.keys(options)[0]) as OptionOf<Path>;
}

/** Whether a text may stand at a path: anything in a box, an option in a choice. */
export function mayStand(path: string, text: string): boolean {
  const field = findField(path);
  return field !== undefined && (!('options' in field) || Object.hasOwn(field.options, text));
}

/** Whether a text says nothing: an empty box, a choice as at the start. */
function saysNothing(path: string, text: string): boolean {
  const field = findField(path);
  const start = field && 'options' in field ? Object.keys(field.options)[0] : '';
  return text === start || text === '';
}

/** The sheet with a text at a path; what may not stand there changes nothing. */
export function withTyped(typed: Typed, path: FieldPath, text: string): Typed {
  if (text === (typed[path] ?? '')) return typed;
  if (saysNothing(path, text)) return without(typed, path);
  return mayStand(path, text) ? { ...typed, [path]: text } : typed;
}

/** The sheet of texts by path, of which those that may not stand are left out. */
export function typedFrom(pairs: Iterable<readonly [string, string]>): Typed {
  return sheetOf(
    [...pairs].filter(([path, text]) => mayStand(path, text) && !saysNothing(path, text)),
  );
}

/** The sheet with several boxes filled in; a text that no box can hold is left out. */
export const withTexts = (
  typed: Typed,
  texts: readonly (readonly [path: string, text: string])[],
): Typed => (texts.length === 0 ? typed : typedFrom(new Map([...entriesOf(typed), ...texts])));

/** Whether nothing has been typed; choices alone are not counted. */
export function isBlank(typed: Typed): boolean {
  return entriesOf(typed).every(([path]) => 'options' in fieldAt(path));
}

/** Row number and rest of a path under a list; undefined elsewhere. */
function placeIn(list: ListPath, path: string): readonly [row: number, rest: string] | undefined {
  if (!path.startsWith(`${list}.`)) return undefined;
  const [row = ''] = path.slice(list.length + 1).split('.', 1);
  return [Number(row), path.slice(list.length + 1 + row.length)];
}

function pathsThatDiffer(from: Typed, to: Typed): readonly FieldPath[] {
  const paths: FieldPath[] = [];
  for (const path in to)
    if (from[path as FieldPath] !== to[path as FieldPath]) paths.push(path as FieldPath);
  for (const path in from) if (!(path in to)) paths.push(path as FieldPath);
  return paths;
}

let lastAsked: { from: Typed; to: Typed; paths: readonly FieldPath[] } | undefined;

/** The paths at which two sheets differ; remembered of the two last asked about, as each key is asked about often. */
export function differing(from: Typed, to: Typed): readonly FieldPath[] {
  if (lastAsked?.from !== from || lastAsked.to !== to)
    lastAsked = { from, to, paths: pathsThatDiffer(from, to) };
  return lastAsked.paths;
}

/** Whether two sheets say the same in every row of a list. */
export const isSameList = (from: Typed, to: Typed, list: string): boolean =>
  from === to || !differing(from, to).some((path) => path.startsWith(`${list}.`));

/** What was worked out last about a list, and from which sheet. */
interface About<Value> {
  readonly typed: Typed;
  readonly value: Value;
}

/** Something about a list, worked out again, from what it was last, only when something in its rows has changed. */
function ofList<Value>(
  compute: (typed: Typed, list: ListPath, last?: About<Value>) => Value,
): (typed: Typed, list: ListPath) => Value {
  const known = new Map<ListPath, About<Value>>();
  return (typed, list) => {
    const last = known.get(list);
    const isSame = last && isSameList(last.typed, typed, list);
    const value = isSame ? last.value : compute(typed, list, last);
    known.set(list, { typed, value });
    return value;
  };
}

/** How many rows of a list are there, up to the last in which something is typed. */
export const rowCount = ofList((typed, list) => {
  let count = 0;
  for (const path in typed) {
    const place = placeIn(list, path);
    if (place && place[0] >= count) count = place[0] + 1;
  }
  return count;
});

/** One value for each row of a list; a row in which nothing has changed since the last time keeps its own. */
export function rowsOf<Row>(
  typed: Typed,
  list: ListPath,
  row: (path: string, at: number) => Row,
  last?: About<readonly Row[]>,
): readonly Row[] {
  const changed = new Set(
    last && differing(last.typed, typed).map((path) => placeIn(list, path)?.[0]),
  );
  const kept = (at: number) => (changed.has(at) ? undefined : last?.value[at]);
  return Array.from(
    { length: rowCount(typed, list) },
    (_, at) => kept(at) ?? row(`${list}.${at}`, at),
  );
}

/** The texts of a list, row by row, in the order of its columns. */
export const cellsIn = ofList(
  (typed, list, last?: About<readonly (readonly string[])[]>): readonly (readonly string[])[] => {
    const columns = cellsOf(list);
    const texts = (path: string) =>
      columns.map((column) => typedAt(typed, `${path}.${column}` as FieldPath));
    return rowsOf(typed, list, texts, last);
  },
);

/** The sheet with the rows of a list renumbered; a row without a new number goes. */
function withRows(
  typed: Typed,
  list: ListPath,
  renumbered: (row: number) => number | undefined,
): Typed {
  const moved = entriesOf(typed).map(([path, text]): readonly [string, string] => {
    const place = placeIn(list, path);
    const row = place && renumbered(place[0]);
    return [place ? `${list}.${row}${place[1]}` : path, text];
  });
  return typedFrom(moved); // a row without a number is no path
}

/** The sheet without one row of a list; those behind it move up. */
export const withoutRow = (typed: Typed, list: ListPath, row: number): Typed =>
  withRows(typed, list, (at) => (at === row ? undefined : at > row ? at - 1 : at));

/** The sheet with an empty row put in; a list that is full stays as it is. */
export function withNewRow(typed: Typed, list: ListPath, row: number): Typed {
  if (rowCount(typed, list) >= mostRows(list)) return typed;
  return withRows(typed, list, (at) => (at >= row ? at + 1 : at));
}

/** The sheet without what is typed at a path or anywhere under it. */
export function without(typed: Typed, path: string): Typed {
  const left = entriesOf(typed).filter(([at]) => at !== path && !at.startsWith(`${path}.`));
  return left.length === Object.keys(typed).length ? typed : sheetOf(left);
}

/** List, row and column of a cell; undefined for what stands in no list. */
export function cellAt(path: string) {
  const [, list = '', row, cell = ''] = /^(.+)\.(\d+)\.(\w+)$/.exec(path) ?? [];
  return row === undefined ? undefined : { list: list as ListPath, row: Number(row), cell };
}
