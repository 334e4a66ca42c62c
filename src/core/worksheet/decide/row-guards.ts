/**
 * What the worksheet wants told of single rows of its readings, and of rows that it does not use.
 * Units: SI only.
 * Source: definition.
 */
import type { Worksheet } from '../inputs.ts';
import { dialFalls } from '../measure/dial-falls.ts';
import { looksLikeMarks } from '../measure/dial-marks.ts';
import { missedTurns } from '../measure/dial-turns.ts';
import { oddRow } from '../measure/odd-row.ts';
import type { SeriesResult } from '../measure/readings.ts';
import type { WorksheetPath } from '../path.ts';
import type { WorksheetGuard } from './rails.ts';

/** Everything to tell of a series, row by row. */
export function seriesGuards(series: SeriesResult, worksheet: Worksheet): WorksheetGuard[] {
  return [
    ...(isInMarks(series, worksheet) ? [] : ofDial(series, worksheet)),
    ...ofFall(series),
    ...rowsGuard('rowsLeftOut', series.leftOut),
    ...rowsGuard('rowsStruck', series.struck),
  ];
}

/** What the dial shows tells nothing of single rows while it may be in the wrong unit. */
function isInMarks({ rows }: SeriesResult, { readings, rig }: Worksheet): boolean {
  const dials = rows.flatMap((row) => readings[row]?.dial ?? []);
  return looksLikeMarks(dials, rig.graduation);
}

function ofDial(series: SeriesResult, { rig }: Worksheet): WorksheetGuard[] {
  const missed = missedTurns(series, rig.travelPerTurn).map(
    ({ row, turns, isAlone }): WorksheetGuard => {
      const values = { row, turns, isAlone: Number(isAlone) };
      return {
        code: 'missedDialTurn',
        level: 'warn',
        values,
        inputs: [`readings.${row}.wholeTurns`],
      };
    },
  );
  const odd = missed.length === 0 ? ofOddRow(series) : [];
  return [...missed, ...odd, ...ofDialFalls(series, [...missed, ...odd])];
}

/** Rows at which the dial goes back; what a missed turn or an odd row explains, there or in the row before, is not told twice. */
function ofDialFalls(series: SeriesResult, told: readonly WorksheetGuard[]): WorksheetGuard[] {
  const isTold = (row: number) =>
    told.some(({ values }) => values['row'] === row || values['row'] === row - 1);
  return dialFalls(series)
    .filter(({ row }) => !isTold(row))
    .map(({ row, back }) => ({
      code: 'dialFalls',
      level: 'warn',
      values: { row, back },
      inputs: [`readings.${row}.dial`],
    }));
}

/** Two falls in a row are no second pass from the start: there the handle was loosened. */
function ofFall({ rows, series, torques }: SeriesResult): WorksheetGuard[] {
  const falls = (at: number) =>
    series[at] === series[at - 1] && (torques[at] ?? Infinity) < (torques[at - 1] ?? -Infinity);
  const row = rows[torques.findIndex((_, at) => falls(at) && falls(at + 1))];
  if (row === undefined) return [];
  return [{ code: 'torqueFalls', level: 'warn', values: { row }, inputs: ['readings'] }];
}

function ofOddRow(series: SeriesResult): WorksheetGuard[] {
  const odd = oddRow(series);
  if (odd === undefined) return [];
  return [
    { code: 'oddRow', level: 'warn', values: { ...odd }, inputs: [`readings.${odd.row}.dial`] },
  ];
}

/** A note that some rows are not used; nothing where there are none. */
export function rowsGuard(
  code: 'rowsLeftOut' | 'rowsBelowDrag' | 'rowsWithoutTorque' | 'rowsStruck',
  rows: readonly number[],
): WorksheetGuard[] {
  if (rows.length === 0) return [];
  const inputs = rows.map((row): WorksheetPath => `readings.${row}`);
  return [{ code, level: 'note', values: { count: rows.length }, inputs }];
}
