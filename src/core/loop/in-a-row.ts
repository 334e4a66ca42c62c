/**
 * Springs in a row that need not be straight: the force at which together they give so far.
 * Units: SI only (m, N, N/m).
 * Source: definition (one force through all, travels add); solved by `root.ts`.
 */
import { assertPositive } from '../assert.ts';
import { rootBetween } from '../root.ts';

/** Parts that one force goes through. */
export interface PartsInARow {
  /** How far all give together, m: 0 without force, and growing with it. */
  readonly travelUnder: (force: number) => number;
  readonly stiffness: number; // N/m, > 0: of one part that is straight
}

/** Force in N at which the parts have given so far, m; 0 for no travel. @throws RangeError unless the stiffness is above 0 */
export function forceAtTravel({ travelUnder, stiffness }: PartsInARow, travel: number): number {
  assertPositive('stiffness', stiffness, 'N/m');
  if (travel <= 0) return 0;
  const ifAllElseWereRigid = travel * stiffness;
  return rootBetween((force) => travelUnder(force) - travel, 0, ifAllElseWereRigid);
}
