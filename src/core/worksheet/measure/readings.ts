/**
 * The loading series of the worksheet, one or several, as stretch since the first usable row of each.
 * Units: SI only (m, N·m, turns).
 * Source: definition.
 */

import type { Worksheet, WorksheetReading } from '../inputs.ts';
import { isUsable } from '../known-inputs.ts';
import { type LoadReading, loadIn, loadReading } from '../load.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import type { UsableDialReading } from './dial.ts';
import { usableDialReading, worksheetElongations } from './dial.ts';
import type { Repeatability } from './repeatability.ts';
import { worksheetRepeatability } from './repeatability.ts';

/** One row that can be used. */
export interface UsableRow extends UsableDialReading {
  readonly row: number; // place in worksheet.readings
  readonly series: number; // its number
  readonly torque: number; // N·m, 0 where the screw was left alone
  readonly turns: number | undefined; // turns of the screw
}

/** The usable rows, in the order they were taken, and the top torque among them. */
export interface RowsResult {
  readonly firsts: readonly UsableRow[]; // of each series; its stretch is counted from it
  readonly used: readonly UsableRow[];
  readonly leftOut: readonly number[]; // rows with something in them that could not be used
  readonly struck: readonly number[]; // rows that the reader struck out
  readonly topTorque: number; // N·m
  readonly loadReading: LoadReading; // how well wrench or gauge are read
}

/** The usable rows as a series; the arrays have one entry for each. */
export interface SeriesResult extends Repeatability {
  readonly rows: readonly number[]; // place of each in worksheet.readings
  readonly series: readonly number[]; // number of the series that each belongs to
  readonly torques: readonly number[]; // N·m
  readonly elongations: readonly number[]; // m since the first usable row of its series, growing with stretch
  readonly turns: readonly (number | undefined)[]; // turns of the screw
  readonly leftOut: readonly number[]; // rows with something in them that could not be used
  readonly struck: readonly number[]; // rows that the reader struck out
  readonly topTorque: number; // N·m
  readonly loadReading: LoadReading;
}

/** Rows with a torque and a dial reading that are not struck out; waits for `readings` while there is none. */
export function worksheetRows({ readings, tensioner }: Worksheet): Outcome<RowsResult> {
  const numbers = seriesNumbers(readings);
  const rows = readings.map((reading, row) => {
    const torque = loadIn({ tensioner }, reading);
    return usableRow({ ...reading, torque }, row, numbers[row] as number);
  });
  const places = [...readings.entries()].filter(([, reading]) => !isBlank(reading));
  const struck = places.filter(([, reading]) => isStruck(reading)).map(([row]) => row);
  const used = rows.filter((row) => row !== undefined);
  if (used.length === 0) return { ready: false, waitsFor: ['readings'] };
  return ready({
    firsts: used.filter((row, at) => used.findIndex(({ series }) => series === row.series) === at),
    used,
    leftOut: places.map(([row]) => row).filter((row) => !rows[row] && !struck.includes(row)),
    struck,
    topTorque: Math.max(...used.map(({ torque }) => torque)),
    loadReading: loadReading(tensioner),
  });
}

/** The first row of the series that a row belongs to. */
export function firstOfSeries(firsts: readonly UsableRow[], number: number): UsableRow {
  return firsts.find(({ series }) => series === number) as UsableRow;
}

/** Stretch at each usable row since the first of its series, with the repeatability it is judged by. */
export function worksheetSeries(
  { rig }: Worksheet,
  rows: Outcome<RowsResult>,
): Outcome<SeriesResult> {
  return whenReady({ rows }, ({ rows: { firsts, used, leftOut, struck, ...load } }) => {
    const torques = used.map(({ torque }) => torque);
    const series = used.map((row) => row.series);
    const firstOf = (row: UsableRow) => firstOfSeries(firsts, row.series);
    const travel = worksheetElongations(rig, firstOf, used);
    return whenReady({ travel }, ({ travel: { elongations } }) => {
      const dial = worksheetRepeatability(rig, { torques, series, elongations });
      return whenReady({ dial }, ({ dial: { repeatability, repeatabilityFrom } }) =>
        ready({
          rows: used.map(({ row }) => row),
          series,
          torques,
          elongations,
          turns: used.map(({ turns }) => turns),
          leftOut,
          struck,
          ...load,
          repeatability,
          repeatabilityFrom,
        }),
      );
    });
  });
}

/** The number of the series of each row: its own, or that of the row above. */
function seriesNumbers(readings: readonly WorksheetReading[]): readonly number[] {
  let current = 1;
  return readings.map(({ series }) => {
    if (isUsable(series)) current = series;
    return current;
  });
}

function usableRow(reading: WorksheetReading, row: number, series: number): UsableRow | undefined {
  const dial = usableDialReading(reading);
  const { torque, turns } = reading;
  if (!(dial && isUsable(torque, 'notNegative')) || isStruck(reading)) return undefined;
  return { ...dial, row, series, torque, turns: isUsable(turns, 'finite') ? turns : undefined };
}

const isStruck = ({ struck = '' }: WorksheetReading): boolean => struck.trim() !== '';

/** Whether nothing of a row is filled in; the number of its series alone is nothing. */
function isBlank({ series: _, ...reading }: WorksheetReading): boolean {
  return Object.values(reading).every((input) => input === undefined || input === '');
}
