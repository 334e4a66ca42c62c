/** What is said under a row of the readings that is not used. */
import type { WorksheetResults } from '../../core/worksheet.ts';
import type { Shown } from '../state/shown.ts';
import { rowReason } from './verdict-words.ts';

/**
 * Sentences by the place of their row. A row that is struck out says why itself; one that lacks something may still
 * be on its way, until a row behind it is used.
 */
export function rowNotes(
  { rowReasons, series }: Pick<WorksheetResults, 'rowReasons' | 'series'>,
  shown: Shown,
): Readonly<Record<number, string>> {
  const lastUsed = series.ready ? (series.rows.at(-1) ?? -1) : -1;
  const told = rowReasons.filter(
    ({ row, reason }) => reason !== 'struck' && (reason !== 'notUsable' || row < lastUsed),
  );
  return Object.fromEntries(told.map(({ row, reason }) => [row, rowReason(reason, shown)]));
}
