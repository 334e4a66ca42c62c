/**
 * The table of checks: for each figure, what the source prints and what the core makes of the same inputs.
 * Units: as the source prints them.
 */
import { allAnswers } from './all-answers.ts';
import type { Answer, Within } from './answer.ts';
import { numberAt, type PublishedCase, publishedCases } from './cases.ts';
import { sourceOf } from './source-names.ts';

/** How well the source's own figure was seen; `solved` ones are from a computed solution of its example, `constructed` ones are worked out by us. */
export type Status = 'seen in print' | 'in part' | 'solved' | 'from memory' | 'constructed';

/** One line of the table. */
export interface CheckRow {
  readonly caseId: string;
  readonly topic: string;
  readonly source: string; // short name
  readonly citation: string;
  readonly path: string;
  readonly quantity: string;
  readonly unit: string; // '' for a plain number
  readonly printed: number;
  readonly decimals: number | undefined; // that the source prints, where that is the tolerance
  readonly ours: number;
  readonly tolerance: number; // largest difference allowed, same unit
  readonly status: Status;
}

function statusOf({ path }: Answer, { verified }: PublishedCase): Status {
  if (path.startsWith('recomputed') || verified.startsWith('constructed')) return 'constructed';
  if (verified.startsWith('digits of a computed solution')) return 'solved';
  if (verified === 'from memory' || verified === 'seen in print') return verified;
  return 'in part';
}

/** A half of the last decimal, and a rounding of the machine beside it. */
const toleranceOf = (printed: number, within: Within): number => {
  if ('decimals' in within)
    return 0.5 * 10 ** -within.decimals + 4 * Number.EPSILON * Math.abs(printed);
  return 'absolute' in within ? within.absolute : within.relative * Math.abs(printed);
};

function rowOf(answer: Answer, from: PublishedCase): CheckRow {
  const { path, quantity, unit, ours, within } = answer;
  const printed = numberAt(from.expected, path);
  const { id: caseId, topic, citation } = from;
  return {
    caseId,
    topic,
    source: sourceOf(caseId),
    citation,
    path,
    quantity,
    unit,
    printed,
    decimals: 'decimals' in within ? within.decimals : undefined,
    ours,
    tolerance: toleranceOf(printed, within),
    status: statusOf(answer, from),
  };
}

/** Every figure that the core can answer, case by case. */
export const checkRows: readonly CheckRow[] = publishedCases.flatMap((from) =>
  (allAnswers[from.id]?.(from) ?? []).map((answer) => rowOf(answer, from)),
);

/** Whether ours comes near enough. */
export const agrees = ({ printed, ours, tolerance }: CheckRow): boolean =>
  Math.abs(ours - printed) <= tolerance;

/** Rows whose figure stands in a source that was looked up, in whole or in part. */
export const publishedRows = checkRows.filter(
  ({ status }) => status === 'seen in print' || status === 'in part',
);

/** Rows whose digits come from a computed solution of a source's example; its own print was not seen. */
export const solvedRows = checkRows.filter(({ status }) => status === 'solved');

/** Rows whose figure is remembered. */
export const rememberedRows = checkRows.filter(({ status }) => status === 'from memory');

/** Rows worked out from a source's inputs or form to more digits than it prints. */
export const constructedRows = checkRows.filter(({ status }) => status === 'constructed');
