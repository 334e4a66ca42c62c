/**
 * The log of settings, as its chart draws it: entries with a day and a torque, in the order of their days.
 * Units: N·m; days in ms since 1970.
 * Source: definition.
 */
import type { LogEntry } from '../../charts/log.ts';
import type { LoadName } from '../../core/worksheet.ts';
import { readBox } from '../../form/box.ts';
import { FIELDS } from '../../form/fields.ts';
import { cellsOf } from '../../form/paths.ts';
import type { UnitSystem } from '../../units/kinds.ts';

const DAY = /^(\d{4})-(\d{2})-(\d{2})$/;

/** The moment of a day written as 2026-11-29, by this device's clock; undefined for anything else. */
export function dayOf(text: string): number | undefined {
  const [, year, month, day] = DAY.exec(text.trim()) ?? [];
  if (year === undefined) return undefined;
  const date = new Date(Number(year), Number(month) - 1, Number(day));
  return dayText(date) === text.trim() ? date.getTime() : undefined; // no 30th of February
}

/** A day as the log writes it. */
export function dayText(date: Date): string {
  const two = (number: number) => String(number).padStart(2, '0');
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

/** What can be drawn of the cells of the log: date, torque or pressure, and what the chart does not show. */
export function logEntries(
  cells: readonly (readonly string[])[],
  system: UnitSystem,
  load: LoadName = 'torque',
): readonly LogEntry[] {
  const [dates, loads] = ['date', load].map((cell) => cellsOf('log').indexOf(cell));
  const entries = cells.flatMap((row) => {
    const day = dayOf(row[dates ?? 0] ?? '');
    const torque = readBox(row[loads ?? 0] ?? '', FIELDS[`log.*.${load}`], system).value;
    return day === undefined || torque === undefined ? [] : [{ day, torque }];
  });
  return entries.sort((a, b) => a.day - b.day);
}
