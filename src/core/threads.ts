/**
 * A thread by its name, as people write it.
 * Units: SI only (m, m², rad).
 * Source: the lists of `series.ts` and the rules of `profile.ts`.
 */
import { type FamilySize, sizeAsWritten, withoutRemark } from './threads/as-written.ts';
import { listedThreads } from './threads/list.ts';
import { listedBy, longestName, spelling } from './threads/listed.ts';
import type { Thread } from './threads/profile.ts';
import { threadProfile } from './threads/profile.ts';
import { plainWasher, type Washer } from './threads/washers.ts';

export { inch, pitchDiameter, threadHalfAngle } from './threads/form.ts';
export { threadDesignations } from './threads/list.ts';
export { thread } from './threads/listed.ts';
export { plainWasher, type Washer } from './threads/washers.ts';

const SAME_LENGTH = 1e-7; // m: `0.75` and `3/4`, `2.5` and `2.50`

const sameSize = (one: FamilySize) => (other: FamilySize) =>
  one.family === other.family &&
  Math.abs(one.majorDiameter - other.majorDiameter) < SAME_LENGTH &&
  Math.abs(one.pitch - other.pitch) < SAME_LENGTH;

/** What a name says, in a list or not; undefined where it is the name of no thread. */
function familySize(designation: string): FamilySize | undefined {
  const name = withoutRemark(designation.slice(0, longestName).toLowerCase());
  return listedBy(name) ?? sizeAsWritten(spelling(name));
}

/** A thread, whether a list has its size, and whether that is told in inches. */
export interface ThreadByName extends Thread {
  readonly isListed: boolean;
  readonly isInch: boolean;
}

const isInch = ({ family }: FamilySize): boolean => family === 'unified' || family === 'acme';

/** The thread of a name, though no list has its pitch. Undefined where a name has no size that a screw can have. */
export function threadByName(designation: string): ThreadByName | undefined {
  const size = familySize(designation);
  if (size === undefined || size.pitch >= size.majorDiameter / 2) return undefined;
  const isListed = listedThreads.some(sameSize(size));
  return { ...threadProfile(size.family, size), isListed, isInch: isInch(size) };
}

/** The plain washer of a thread by its name; undefined where that is of none. */
export function washerOfThread(designation: string): Washer | undefined {
  const size = familySize(designation);
  if (size === undefined) return undefined;
  return plainWasher(isInch(size) ? 'inch' : 'metric', size.majorDiameter);
}
