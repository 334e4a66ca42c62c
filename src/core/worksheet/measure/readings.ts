/**
 * The loading series of the worksheet, as stretch since its first usable row.
 * Units: SI only (m, N·m, turns).
 * Source: definition.
 */

import type { Worksheet, WorksheetReading } from '../inputs.ts';
import { isUsable } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import type { UsableDialReading } from './dial.ts';
import { usableDialReading, worksheetElongations } from './dial.ts';
import type { Repeatability } from './repeatability.ts';
import { worksheetRepeatability } from './repeatability.ts';

/** One row that can be used. */
export interface UsableRow extends UsableDialReading {
  readonly row: number; // place in worksheet.readings
  readonly torque: number; // N·m
  readonly turns: number | undefined; // turns of the screw
}

/** The usable rows, in the order they were taken, and the top torque among them. */
export interface RowsResult {
  readonly first: UsableRow; // stretch is counted from it
  readonly used: readonly UsableRow[];
  readonly leftOut: readonly number[]; // rows with something in them that could not be used
  readonly topTorque: number; // N·m
}

/** The usable rows as a series; the arrays have one entry for each. */
export interface SeriesResult extends Repeatability {
  readonly rows: readonly number[]; // place of each in worksheet.readings
  readonly torques: readonly number[]; // N·m
  readonly elongations: readonly number[]; // m since the first usable row, growing with stretch
  readonly turns: readonly (number | undefined)[]; // turns of the screw
  readonly leftOut: readonly number[]; // rows with something in them that could not be used
  readonly topTorque: number; // N·m
}

/** Rows with a torque and a dial reading; waits for `readings` while there is none. */
export function worksheetRows({ readings }: Worksheet): Outcome<RowsResult> {
  const rows = readings.map(usableRow);
  const used = rows.filter((row) => row !== undefined);
  const [first] = used;
  if (first === undefined) return { ready: false, waitsFor: ['readings'] };
  const leftOut = [...rows.keys()].filter(
    (row) => rows[row] === undefined && !isBlank(readings[row] as WorksheetReading),
  );
  return ready({ first, used, leftOut, topTorque: Math.max(...used.map(({ torque }) => torque)) });
}

/** Stretch at each usable row since the first of them, with the repeatability it is judged by. */
export function worksheetSeries(
  { rig }: Worksheet,
  rows: Outcome<RowsResult>,
): Outcome<SeriesResult> {
  return whenReady({ rows }, ({ rows: { first, used, leftOut, topTorque } }) => {
    const torques = used.map(({ torque }) => torque);
    const travel = worksheetElongations(rig, first, used);
    return whenReady({ travel }, ({ travel: { elongations } }) => {
      const dial = worksheetRepeatability(rig, torques, elongations);
      return whenReady({ dial }, ({ dial: { repeatability, repeatabilityFrom } }) =>
        ready({
          rows: used.map(({ row }) => row),
          torques,
          elongations,
          turns: used.map(({ turns }) => turns),
          leftOut,
          topTorque,
          repeatability,
          repeatabilityFrom,
        }),
      );
    });
  });
}

function usableRow(reading: WorksheetReading, row: number): UsableRow | undefined {
  const dial = usableDialReading(reading);
  const { torque, turns } = reading;
  if (!(dial && isUsable(torque))) return undefined;
  return { ...dial, row, torque, turns: isUsable(turns, 'finite') ? turns : undefined };
}

function isBlank(reading: WorksheetReading): boolean {
  return Object.values(reading).every((input) => input === undefined);
}
