/**
 * The threads of the lists by their names, however those are spelled.
 * Units: SI only (m, m², rad).
 * Source: the lists of `series.ts` and the rules of `profile.ts`.
 */
import { refuse } from '../assert.ts';
import type { ListedThread } from './list.ts';
import { listedThreads } from './list.ts';
import type { Thread } from './profile.ts';
import { threadProfile } from './profile.ts';

/** A name from outside may be of any length; no listed one comes near this. */
export const longestName = 40;

/** One spelling for the many: case, spaces, ×, dashes, inch marks, zeros, class, word order. */
export function spelling(text: string): string {
  return text
    .toLowerCase()
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
export function listedBy(designation: string): ListedThread | undefined {
  const spelled = spelling(designation.slice(0, longestName));
  const exact = threadBySpelling.get(spelled);
  if (exact || !/^[\d/]+-\d+$/.test(spelled)) return exact;
  const begun = listedThreads.filter((listed) =>
    spelling(listed.designation).startsWith(`${spelled} `),
  );
  return begun.length === 1 ? begun[0] : undefined;
}

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

/**
 * Basic profile of a named thread: `M20` (coarse), `M20x1.5`, `3/4-10 UNC`, `3/4-16 UNF`,
 * `3/4-6 Acme`, `Tr20x4`. Case, spaces, ×, inch marks, a decimal comma and
 * a tolerance class (`-2A`, `-6g`) do not matter.
 * @throws RangeError for a name that is not in the lists, with names like it
 */
export function thread(designation: string): Thread {
  const typed = designation.slice(0, longestName);
  const listed =
    listedBy(typed) ??
    refuse('designation', `a listed thread, ${suggestions(spelling(typed))}`, '', typed);
  return threadProfile(listed.family, listed);
}
