/**
 * Everything the worksheet wants told, whether or not its results are there: stops first.
 * Units: SI only.
 * Source: definition.
 */
import { missedTurns } from './worksheet-dial-turns.ts';
import type { Worksheet } from './worksheet-form.ts';
import { oddRow } from './worksheet-odd-row.ts';
import type { Outcome } from './worksheet-outcome.ts';
import type { RailsResult, WorksheetGuard } from './worksheet-rails.ts';
import type { SeriesResult } from './worksheet-readings.ts';
import type { SettingResult } from './worksheet-setting.ts';
import type { TurnsResult } from './worksheet-turns.ts';
import type { ZeroResult } from './worksheet-zero.ts';

/** What the guards look at. */
export interface Guarded {
  readonly series: Outcome<SeriesResult>;
  readonly zero: Outcome<ZeroResult>;
  readonly turns: Outcome<TurnsResult>;
  readonly setting: Outcome<SettingResult>;
  readonly rails: Outcome<RailsResult>;
  readonly otherRails: Outcome<RailsResult>;
}

const order = { stop: 0, warn: 1, note: 2 } as const;

/** All guards, stops first; what both bands touch alike is told for each. */
export function worksheetGuards(worksheet: Worksheet, guarded: Guarded): readonly WorksheetGuard[] {
  const found = [
    ...(guarded.rails.ready ? guarded.rails.found : []),
    ...(guarded.otherRails.ready ? guarded.otherRails.found : []),
    ...(guarded.series.ready ? ofSeries(guarded.series, worksheet.rig.travelPerTurn) : []),
    ...(guarded.zero.ready ? ofZero(guarded.zero) : []),
    ...(guarded.turns.ready ? ofTurns(guarded.turns) : []),
    ...(guarded.setting.ready ? ofSetting(guarded.setting) : []),
  ];
  return found.sort((a, b) => order[a.level] - order[b.level]);
}

function ofSeries(series: SeriesResult, travelPerTurn: number | undefined): WorksheetGuard[] {
  const missed = missedTurns(series, travelPerTurn).map(({ row, turns }): WorksheetGuard => {
    const fields = [`readings.${row}.wholeTurns`];
    return { code: 'missedDialTurn', level: 'warn', values: { row, turns }, fields };
  });
  const odd = missed.length === 0 ? ofOddRow(series) : [];
  return [...missed, ...odd, ...ofRows('rowsLeftOut', series.leftOut)];
}

function ofOddRow(series: SeriesResult): WorksheetGuard[] {
  const odd = oddRow(series);
  if (odd === undefined) return [];
  return [
    { code: 'oddRow', level: 'warn', values: { ...odd }, fields: [`readings.${odd.row}.dial`] },
  ];
}

function ofZero(zero: ZeroResult): WorksheetGuard[] {
  const { low, high } = zero;
  const warned = zero.warnings.map((code): WorksheetGuard => {
    return { code, level: 'warn', values: { low, high }, fields: ['readings'] };
  });
  return [...warned, ...ofRows('rowsBelowDrag', zero.belowDrag)];
}

function ofRows(code: 'rowsLeftOut' | 'rowsBelowDrag', rows: readonly number[]): WorksheetGuard[] {
  if (rows.length === 0) return [];
  const fields = rows.map((row) => `readings.${row}`);
  return [{ code, level: 'note', values: { count: rows.length }, fields }];
}

function ofTurns({ fewerTurnsThanBand, totalStiffness }: TurnsResult): WorksheetGuard[] {
  if (!fewerTurnsThanBand) return [];
  const values = { totalStiffness };
  return [{ code: 'fewerTurnsThanBand', level: 'warn', values, fields: ['readings'] }];
}

function ofSetting({ beyondReadings, torque, operands }: SettingResult): WorksheetGuard[] {
  if (!beyondReadings) return [];
  const values = { torque, topTorque: operands.topTorque };
  return [{ code: 'beyondReadings', level: 'note', values, fields: ['readings', 'target.stress'] }];
}
