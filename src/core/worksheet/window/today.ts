/**
 * The stress that the worksheet's mill is set to today: as measured at the torque in use, else as the screw predicts it.
 * Units: SI only (Pa).
 * Source: definition.
 */
import type { AtUse } from '../at-use.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';

/** Today's stress, with its 95 % interval and where it comes from. */
export interface TodaysStress {
  readonly route: 'measured' | 'predicted';
  readonly stress: number; // Pa
  readonly low: number; // Pa
  readonly high: number; // Pa
}

/** Today's stress; waits for the torque in use where nothing tells it. */
export function worksheetToday({
  atUse,
  predictedAtUse,
}: Pick<AtUse, 'atUse' | 'predictedAtUse'>): Outcome<TodaysStress> {
  if (atUse.ready) {
    const { stress, low, high } = atUse;
    return ready({ route: 'measured', stress, low: Math.max(0, low), high });
  }
  return whenReady({ predicted: predictedAtUse }, ({ predicted: { stress, low, high } }) =>
    ready({ route: 'predicted', stress, low, high }),
  );
}
