/**
 * A screw made of a thread, its starts, and the frictions of thread and collar.
 * Units: SI only (m, rad).
 * Source: lead = starts × pitch, definition.
 */
import { assertWhole } from '../assert.ts';
import type { Thread } from '../threads/profile.ts';
import type { Collar } from './collar.ts';
import type { Screw } from './torque.ts';

/** What a thread's name does not tell of a screw. */
export interface ScrewFittings extends Collar {
  readonly threadFriction: number;
  readonly starts?: number; // a whole number, 1 by default
}

/**
 * The screw that has this thread.
 * @throws RangeError unless starts is a whole number from 1 to 8
 */
export function screwOnThread(
  { pitchDiameter, pitch, halfAngle }: Pick<Thread, 'pitchDiameter' | 'pitch' | 'halfAngle'>,
  { starts = 1, ...fittings }: ScrewFittings,
): Screw {
  assertWhole('starts', starts, 1, 8);
  return { meanDiameter: pitchDiameter, lead: starts * pitch, halfAngle, ...fittings };
}
