/**
 * What the dial itself will show at the setting, while bar and dial stay clamped as they were for the readings.
 * Units: SI only (m).
 * Source: proportion along the straight part found by zero.ts; definition.
 */

import type { Worksheet, WorksheetRig } from '../inputs.ts';
import { isUsable } from '../known-inputs.ts';
import { shiftAtShare } from '../measure/bar-weight.ts';
import type { UsableDialReading } from '../measure/dial.ts';
import type { RowsResult } from '../measure/readings.ts';
import { firstOfSeries } from '../measure/readings.ts';
import type { ZeroResult } from '../measure/zero.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import type { SettingResult } from './setting.ts';

/** A reading as a series has them. */
export interface DialShown {
  readonly series: number; // its number
  readonly dial: number; // m, as shown
  readonly wholeTurns: number;
}

/** The reading in the last series, whose clamping may still stand, and in each of them. */
export interface DialSettingResult extends DialShown {
  readonly each: readonly DialShown[];
}

type Written = Pick<Worksheet, 'rig' | 'readings'>;

/** Whether whole turns are noted beside the hand: as said, or else as any row shows. */
function areTurnsApart({ rig: { dialWritten }, readings }: Written): boolean {
  if (dialWritten !== 'unasked') return dialWritten === 'handOnly';
  return readings.some(({ wholeTurns }) => isUsable(wholeTurns, 'finite'));
}

/** The shown number and the whole turns at a travel since the first reading; the number goes on where turns are not noted apart, or the travel of one is not known. */
function shownAt(
  travel: number,
  first: UsableDialReading,
  { travelPerTurn, dialRunsBackwards }: WorksheetRig,
  isApart: boolean,
): UsableDialReading {
  const carriedOn = first.dial + (dialRunsBackwards ? -travel : travel);
  if (!isApart || !isUsable(travelPerTurn))
    return { dial: carriedOn, wholeTurns: first.wholeTurns };
  const round = Math.floor(carriedOn / travelPerTurn);
  const wholeTurns = first.wholeTurns + (dialRunsBackwards ? -round : round) + 0; // no minus zero
  return { dial: carriedOn - round * travelPerTurn, wholeTurns };
}

/** The dial at the setting, counted on from the first reading of a series as its rows count and are written; waits as the setting does. */
export function worksheetDialSetting(
  written: Written,
  needs: {
    readonly rows: Outcome<RowsResult>;
    readonly zero: Outcome<ZeroResult>;
    readonly setting: Outcome<SettingResult>;
  },
): Outcome<DialSettingResult> {
  return whenReady(needs, ({ rows: { firsts }, zero, setting: { operands } }) => {
    const share = operands.targetStress / operands.topStress;
    const weight = shiftAtShare(zero.barShiftAtTop, share);
    const travel = share * zero.stretch.stretch - weight;
    const isApart = areTurnsApart(written);
    const each = zero.zeros.map(({ series, zero: start }) => {
      const first = firstOfSeries(firsts, series);
      return { series, ...shownAt(start + travel, first, written.rig, isApart) };
    });
    return ready({ ...(each.at(-1) as DialShown), each });
  });
}
