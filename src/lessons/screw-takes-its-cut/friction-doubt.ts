/**
 * A screw as it is believed, and at the two ends of what its friction may be.
 * Units: SI.
 * Source: `screw-friction` for the spread.
 */
import { screwSpreads, threadFrictionHalfWidth } from '../../core/assumptions.ts';
import type { Screw } from '../../core/screw.ts';
import { threadHalfAngle } from '../../core/threads.ts';

/** The reader's numbers for a screw, and the form of its thread. */
export interface ScrewInputs extends Omit<Screw, 'halfAngle'> {
  readonly threadForm: keyof typeof threadHalfAngle;
}

/** The screw that these numbers describe. */
export function screwOf({ threadForm, ...sizes }: ScrewInputs): Screw {
  return { ...sizes, halfAngle: threadHalfAngle[threadForm] };
}

/** The screw with its friction at one end of the doubt: `side` 1 for more of it, -1 for less. */
export function atDoubt(screw: Screw, side: 1 | -1): Screw {
  return {
    ...screw,
    threadFriction: Math.max(0, screw.threadFriction + side * threadFrictionHalfWidth),
    collarFriction: screw.collarFriction * (1 + side * screwSpreads.collarFriction),
  };
}
