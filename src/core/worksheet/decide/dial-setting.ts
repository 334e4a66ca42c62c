/**
 * What the dial itself will show at the setting, while bar and dial stay clamped as they were for the readings.
 * Units: SI only (m).
 * Source: proportion along the straight part found by zero.ts; definition.
 */

import type { WorksheetRig } from '../inputs.ts';
import { isUsable } from '../known-inputs.ts';
import { shiftAtShare } from '../measure/bar-weight.ts';
import type { RowsResult } from '../measure/readings.ts';
import type { ZeroResult } from '../measure/zero.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import type { SettingResult } from './setting.ts';

/** A reading as the series has them. */
export interface DialSettingResult {
  readonly dial: number; // m, as shown
  readonly wholeTurns: number;
}

/** The shown number and the whole turns at a travel since the first reading; no turns where the travel of one is not known. */
function shownAt(
  travel: number,
  first: RowsResult['first'],
  { travelPerTurn, dialRunsBackwards }: WorksheetRig,
): DialSettingResult {
  const carriedOn = first.dial + (dialRunsBackwards ? -travel : travel);
  if (!isUsable(travelPerTurn)) return { dial: carriedOn, wholeTurns: first.wholeTurns };
  const round = Math.floor(carriedOn / travelPerTurn);
  const wholeTurns = first.wholeTurns + (dialRunsBackwards ? -round : round) + 0; // no minus zero
  return { dial: carriedOn - round * travelPerTurn, wholeTurns };
}

/** The dial at the setting, counted on from the first reading as the rows count; waits as the setting does. */
export function worksheetDialSetting(
  rig: WorksheetRig,
  needs: {
    readonly rows: Outcome<RowsResult>;
    readonly zero: Outcome<ZeroResult>;
    readonly setting: Outcome<SettingResult>;
  },
): Outcome<DialSettingResult> {
  return whenReady(needs, ({ rows: { first }, zero, setting: { operands } }) => {
    const share = operands.targetStress / operands.topStress;
    const weight = shiftAtShare(zero.barShiftAtTop, share);
    return ready(shownAt(zero.zero + share * zero.stretch.stretch - weight, first, rig));
  });
}
