/** What a result waits for, in the names of the boxes. */
import { fieldAt } from '../../form/fields.ts';

const PLAIN: Readonly<Record<string, string>> = {
  readings: 'readings',
  otherBand: 'another band',
  'tensioner.thread.designation': 'thread',
};

const lower = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);

/** What a box is called where it does not stand. */
export function boxName(path: string): string {
  const [, row] = /^readings\.(\d+)/.exec(path) ?? [];
  if (row !== undefined) return `row ${Number(row) + 1}`;
  if (/^ways\.\d+\.readings$/.test(path)) return 'readings of its own';
  const plain = PLAIN[path];
  if (plain !== undefined) return plain;
  const field = fieldAt(path);
  if (!field) return path;
  const label = lower(field.label).replace(/^young/, 'Young');
  return field.of === undefined ? label : `${lower(field.of)}, ${label}`.replace(/^young/, 'Young');
}

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
): string {
  const names = [...new Set(paths.map(boxName))];
  if (names.length === 0) return 'Waits for the boxes above.';
  const unusable = paths.filter((path) => refusals[path] !== undefined).map(boxName);
  const mend = unusable.length > 0 ? ` Look again at ${listed([...new Set(unusable)])}.` : '';
  return `Waits for ${listed(names)}.${mend}`;
}
