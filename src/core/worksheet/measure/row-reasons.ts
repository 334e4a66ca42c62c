/**
 * Why a row of the worksheet's readings is not used for its line.
 * Units: none.
 * Source: definition.
 */
import type { Outcome } from '../outcome.ts';
import type { RowsResult } from './readings.ts';
import type { ZeroResult } from './zero.ts';

/** Why a row is not used: struck out by the reader, something is missing, no torque, or no more than turns the empty screw. */
export interface RowReason {
  readonly row: number; // place in worksheet.readings
  readonly reason: 'struck' | 'notUsable' | 'noTorque' | 'belowDrag';
}

/** Every row that is not used, in the order of the rows; all others are, or are empty. */
export function worksheetRowReasons(
  rows: Outcome<RowsResult>,
  zero: Outcome<ZeroResult>,
): readonly RowReason[] {
  const [struck, leftOut, used] = rows.ready
    ? [rows.struck, rows.leftOut, rows.used]
    : [[], [], []];
  const named = (reason: RowReason['reason'], places: readonly number[]) =>
    places.map((row) => ({ row, reason }));
  const found = [
    ...named('struck', struck),
    ...named('notUsable', leftOut),
    ...named(
      'noTorque',
      used.filter(({ torque }) => torque === 0).map(({ row }) => row),
    ),
    ...named('belowDrag', zero.ready ? zero.belowDrag : []),
  ];
  return found.sort((a, b) => a.row - b.row);
}
