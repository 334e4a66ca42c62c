/** What a result waits for, in the names of the boxes. */
import { LISTS } from '../../form/lists.ts';
import { findField, type ListPattern, patternOf, rowsOnTheWay, rowWord } from '../../form/paths.ts';
import { type RowName, rowNamer } from '../../form/series.ts';

const GROUPS: Readonly<Record<string, string>> = {
  'tensioner.thread': 'thread',
};

const lower = (text: string) =>
  text.startsWith('Young') ? text : text.charAt(0).toLowerCase() + text.slice(1);

const isList = (pattern: string): pattern is ListPattern => Object.hasOwn(LISTS, pattern);

/** The row that a path lies in, by its number from 1 on; undefined outside lists whose rows have numbers. */
function rowName(path: string, ofReadings: RowName): string | undefined {
  const [list = '', row] = rowsOnTheWay(path).at(-1) ?? [];
  if (list === 'readings') return ofReadings(Number(row));
  const name = rowWord(list);
  return name && `${name} ${Number(row) + 1}`;
}

/** What a box itself is called where it does not stand. */
function fieldName(path: string): string | undefined {
  const field = findField(path);
  if (!field) return undefined;
  const label = lower(field.label);
  return field.of === undefined ? label : `${lower(field.of)} (${label})`;
}

/** What a box, or a part of the form, is called where it does not stand; a row stands for its cells. */
export function boxName(path: string, ofReadings: RowName = rowNamer()): string {
  const pattern = patternOf(path);
  if (isList(pattern)) return LISTS[pattern].label;
  return rowName(path, ofReadings) ?? GROUPS[path] ?? fieldName(path) ?? path;
}

/** What one box is called, with its row. */
export const cellName = (path: string, ofReadings: RowName = rowNamer()): string =>
  [rowName(path, ofReadings), fieldName(path)].filter(Boolean).join(', ');

/** Where something was found that may be no box: what the box is called, or the place itself. */
export const placeName = (place: string): string => (findField(place) ? cellName(place) : place);

const MOST_NAMED = 4;

function listed(all: readonly string[]): string {
  const more = all.length - MOST_NAMED;
  const names = more > 1 ? [...all.slice(0, MOST_NAMED), `${more} more boxes`] : all;
  if (names.length < 2) return names.join('');
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

/** The sentence under a result that is not there yet; boxes that are filled but refused are told apart. */
export function waitingFor(
  paths: readonly string[],
  refusals: Readonly<Record<string, string>>,
  ofReadings: RowName = rowNamer(),
): string {
  const nameOf = (path: string) => boxName(path, ofReadings);
  const names = [...new Set(paths.map(nameOf))];
  if (names.length === 0) return 'Waits for the boxes above.';
  const unusable = paths.filter((path) => refusals[path] !== undefined).map(nameOf);
  const mend = unusable.length > 0 ? ` Look again at ${listed([...new Set(unusable)])}.` : '';
  return `Waits for ${listed(names)}.${mend}`;
}
