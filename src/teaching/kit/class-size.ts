/**
 * How many learners a class has, and how a link holds it: `#learners=24`. A link from outside is hostile: what is no
 * number of learners is the usual number.
 * Units: counts.
 */
import { type Limits, wholeIn } from './whole.ts';

/** The least and the most that a class may have: as many as there are sheets in one printing. */
export const CLASS_LIMITS: Limits = { least: 1, most: 40 };

/** How many there are until somebody says so. */
export const USUAL_CLASS = 12;

/** The number of learners that a fragment says, if it says one. Never throws. */
export function statedLearners(fragment: string): number | undefined {
  const text = new URLSearchParams(fragment.replace(/^#/, '')).get('learners') ?? '';
  const read = /^\d+$/.test(text) ? wholeIn(text, CLASS_LIMITS) : undefined;
  return read?.ok ? read.value : undefined;
}

/** The same, and the usual number where it says none. */
export const learnersIn = (fragment: string): number => statedLearners(fragment) ?? USUAL_CLASS;
