/**
 * A thread by its name, as people write it.
 * Units: SI only (m, m², rad).
 * Source: the lists of `series.ts` and the rules of `profile.ts`.
 */
import { refuse } from './assert.ts';
import { type FamilySize, sizeAsWritten, withoutRemark } from './threads/as-written.ts';
import type { ListedThread } from './threads/list.ts';
import { listedThreads } from './threads/list.ts';
import type { Thread } from './threads/profile.ts';
import { threadProfile } from './threads/profile.ts';
import { plainWasher, type Washer } from './threads/washers.ts';

export { inch, pitchDiameter, threadHalfAngle } from './threads/form.ts';
export { threadDesignations } from './threads/list.ts';
export { plainWasher, type Washer } from './threads/washers.ts';

/** A name from outside may be of any length; no listed one comes near this. */
const longestName = 40;
const SAME_LENGTH = 1e-7; // m: `0.75` and `3/4`, `2.5` and `2.50`

/** One spelling for the many: case, remarks, spaces, ×, dashes, inch marks, zeros, class, word order. */
function spelling(text: string): string {
  return withoutRemark(text.toLowerCase())
    .replace(/["″”]/g, '')
    .replace(/×/g, 'x')
    .replace(/[‐-―−]/g, '-')
    .replace(/(\d),(\d)/g, '$1.$2')
    .replace(/\d+\.\d+/g, (number) => String(Number(number)))
    .replace(/\s+/g, ' ')
    .replace(/ ?([-x/]) ?/g, '$1')
    .replace(/^ | $/g, '')
    .replace(/^(m|tr) (?=\d)/, '$1')
    .replace(/^(un(?:c|f|s|ef)?|acme) (.+)$/, '$2 $1')
    .replace(/-\d[a-h]$/, '')
    .replace(/(\d)(un(?:c|f|s|ef)?|acme)$/, '$1 $2')
    .replace(/^(\d)-(\d+\/)/, '$1 $2');
}

const threadBySpelling = new Map<string, ListedThread>(
  listedThreads.flatMap((listed) => {
    const names = [listed.designation];
    if (listed.family === 'metric' && !listed.designation.includes('x'))
      names.push(`${listed.designation}x${listed.pitch * 1000}`);
    return names.map((name) => [spelling(name), listed]);
  }),
);

/** The listed thread of a name; a name without its family is that of the one thread that so begins. */
function listedBy(designation: string) {
  const spelled = spelling(designation.slice(0, longestName));
  const exact = threadBySpelling.get(spelled);
  if (exact || !/^[\d/]+-\d+$/.test(spelled)) return exact;
  const begun = listedThreads.filter((listed) =>
    spelling(listed.designation).startsWith(`${spelled} `),
  );
  return begun.length === 1 ? begun[0] : undefined;
}

const sameSize = (one: FamilySize) => (other: FamilySize) =>
  one.family === other.family &&
  Math.abs(one.majorDiameter - other.majorDiameter) < SAME_LENGTH &&
  Math.abs(one.pitch - other.pitch) < SAME_LENGTH;

/** What was perhaps meant: listed threads of the same diameter, or one example of each family. */
function suggestions(spelled: string): string {
  const [diameter] = spelled.split(/[x-]/);
  const near = listedThreads.filter(
    ({ designation }) => spelling(designation).split(/[x-]/)[0] === diameter,
  );
  if (near.length === 0)
    return 'such as M20, M20x1.5, 3/4-10 UNC, 3/4-16 UNF, 3/4-6 Acme or Tr20x4';
  return `such as ${near.map(({ designation }) => designation).join(', ')}`;
}

/** What a name says, in a list or not; undefined where it is the name of no thread. */
function familySize(designation: string): FamilySize | undefined {
  return listedBy(designation) ?? sizeAsWritten(spelling(designation.slice(0, longestName)));
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

/**
 * Basic profile of a named thread: `M20` (coarse), `M20x1.5`, `3/4-10 UNC`, `3/4-16 UNF`,
 * `3/4-6 Acme`, `Tr20x4`. Case, spaces, ×, inch marks, a decimal comma,
 * a tolerance class (`-2A`, `-6g`) and a remark (`, greased`) do not matter.
 * @throws RangeError for a name that is not in the lists, with names like it
 */
export function thread(designation: string): Thread {
  const typed = designation.slice(0, longestName);
  const listed =
    listedBy(typed) ??
    refuse('designation', `a listed thread, ${suggestions(spelling(typed))}`, '', typed);
  return threadProfile(listed.family, listed);
}
