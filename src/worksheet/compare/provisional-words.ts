/**
 * What stands before a torque in part 8 that is not to be relied on yet, so that it is no larger than these words.
 * Units: SI in, the reader's out.
 */
import type { Outcome } from '../../core/worksheet.ts';
import type { SheetView } from '../state/view.ts';
import { measureFirst, notYet } from '../words/setting-words.ts';
import { areApart, heldOn } from './held-back.ts';

interface ByReadings {
  readonly torque: number; // N·m
  readonly beyondReadings: boolean;
}

type Asked = Pick<SheetView, 'result' | 'shown'>;

/** Before the torque by the readings: what to do first where it is held back, or above the highest of them. */
export function beforeByReadings(
  setting: ByReadings,
  sheet: Asked,
  place?: number, // of the other band that it is for
): string | undefined {
  const shown = sheet.shown();
  const { torque, beyondReadings } = setting;
  const held = heldOn(sheet, { beyondReadings, place });
  if (held) return notYet(held, shown);
  return beyondReadings ? `Provisional. ${measureFirst(torque, shown, place)}` : undefined;
}

/** Before the torque by screw or cylinder alone: never larger than the one by the readings, for it only checks that. */
export function beforeByScrew(
  byReadings: Outcome<ByReadings> | undefined,
  sheet: Asked,
  place?: number,
): string | undefined {
  if (areApart(sheet)) return notYet({ by: 'apart' }, sheet.shown());
  return byReadings?.ready && beforeByReadings(byReadings, sheet, place)
    ? 'Only a check.'
    : undefined;
}
