/** One sheet changed in two places: what differs goes over box by box. */
import type { FieldPath } from '../../form/paths.ts';
import { entriesOf, type Typed, typedAt, typedFrom } from '../../form/typed.ts';

/** New texts by path; an empty one for what was cleared. */
export type Changes = ReadonlyMap<FieldPath, string>;

/** What has to be done to `from` to make it `to`. */
export function changesBetween(from: Typed, to: Typed): Changes {
  const paths = [...entriesOf(from), ...entriesOf(to)].map(([path]) => path);
  const differing = paths.filter((path) => from[path] !== to[path]);
  return new Map(differing.map((path) => [path, typedAt(to, path)]));
}

/** A sheet with changes; the same one where they change nothing. */
export function withChanges(typed: Typed, changes: Changes): Typed {
  const isSame = [...changes].every(([path, text]) => typedAt(typed, path) === text);
  return isSame ? typed : typedFrom(new Map([...entriesOf(typed), ...changes]));
}

/** Of the changes that came from elsewhere, those to boxes that have not been changed here. */
export function untouched(changes: Changes, seen: Typed, here: Typed): Changes {
  return new Map([...changes].filter(([path]) => seen[path] === here[path]));
}
