/** One sheet changed in two places: what differs goes over box by box. */
import type { FieldPath } from '../../form/paths.ts';
import { differing, entriesOf, type Typed, typedAt, typedFrom } from '../../form/typed.ts';
import { inSystem, type Project } from '../state/project.ts';

/** New texts by path; an empty one for what was cleared. */
export type Changes = ReadonlyMap<FieldPath, string>;

/** What has to be done to `from` to make it `to`. */
export function changesBetween(from: Typed, to: Typed): Changes {
  return new Map(differing(from, to).map((path) => [path, typedAt(to, path)]));
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

/** What was done to `ours` since `from`, put over what `theirs` has become meanwhile; in the units of `ours`. */
export function mergedOver(theirs: Project, from: Project, ours: Project): Project {
  const [before, there] = [from, theirs].map((project) => inSystem(project, ours.system).typed);
  if (!before || !there) return ours;
  return { ...ours, typed: withChanges(there, changesBetween(before, ours.typed)) };
}
