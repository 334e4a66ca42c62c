/**
 * A screw as it is believed, and at the two ends of what its friction may be.
 * Units: SI.
 * Source: `screw-friction` for the spread; efficiency from core/screw.
 */
import { efficiency, type Screw } from '../core/screw.ts';
import { threadHalfAngle } from '../core/thread-form.ts';
import { COLLAR_DOUBT, FORMS, THREAD_DOUBT } from './mill-screws.ts';

/** The reader's numbers for a screw; `threadForm` is a place in FORMS. */
export interface ScrewInputs extends Omit<Screw, 'halfAngle'> {
  readonly threadForm: number;
}

/** The screw that these numbers describe. */
export function screwOf({ threadForm, ...sizes }: ScrewInputs): Screw {
  return { ...sizes, halfAngle: threadHalfAngle[FORMS[threadForm] ?? 'square'] };
}

/** Efficiency at the rougher and at the smoother end of what friction may be, no unit. */
export function efficiencyRange(screw: Screw): { readonly low: number; readonly high: number } {
  const { threadFriction, collarFriction } = screw;
  return {
    low: efficiency({
      ...screw,
      threadFriction: threadFriction + THREAD_DOUBT,
      collarFriction: collarFriction * (1 + COLLAR_DOUBT),
    }),
    high: efficiency({
      ...screw,
      threadFriction: Math.max(0, threadFriction - THREAD_DOUBT),
      collarFriction: collarFriction * (1 - COLLAR_DOUBT),
    }),
  };
}
