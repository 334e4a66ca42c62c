/**
 * What the worksheet's dial says, as stretch of the gauge length since one of its readings.
 * Units: SI only (m).
 * Source: definition.
 */
import { dialTravel } from '../../elasticity/dial-reading.ts';
import type { WorksheetDialReading, WorksheetRig } from '../inputs.ts';
import { isUsable, knownInputs } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';

/** A dial reading that can be used; its whole turns are none where nothing was noted. */
export interface UsableDialReading {
  readonly dial: number; // m, as shown
  readonly wholeTurns: number;
}

/** The dial readings that are filled with numbers, as they stand; the others are left out. */
export function usableDialReading(reading: WorksheetDialReading): UsableDialReading | undefined {
  const { dial, wholeTurns = 0 } = reading;
  return isUsable(dial, 'finite') && isUsable(wholeTurns, 'finite')
    ? { dial, wholeTurns }
    : undefined;
}

/** Stretch in m of each reading since the first of its series, growing with stretch; waits for the travel of one turn only if there are turns. */
export function worksheetElongations<Reading extends UsableDialReading>(
  rig: WorksheetRig,
  firstOf: (reading: Reading) => UsableDialReading,
  readings: readonly Reading[],
): Outcome<{ readonly elongations: readonly number[] }> {
  const turned = readings.some((reading) => reading.wholeTurns !== firstOf(reading).wholeTurns);
  const travel = turned
    ? knownInputs({ travelPerTurn: ['rig.travelPerTurn', rig.travelPerTurn] })
    : ready({ travelPerTurn: 1 }); // never counted: there are no turns between the readings
  return whenReady({ travel }, ({ travel: { travelPerTurn } }) =>
    ready({
      elongations: readings.map((reading) =>
        dialTravel({
          first: firstOf(reading).dial,
          shown: reading.dial,
          wholeTurns: reading.wholeTurns - firstOf(reading).wholeTurns,
          travelPerTurn,
          runsBackwards: rig.dialRunsBackwards ?? false,
        }),
      ),
    }),
  );
}
