/** The rows as a table to read: by topic, in each by case, every figure as text. */
import { differenceText, oursText, printedText } from './row-text.ts';
import { agrees, type CheckRow, type Status } from './rows.ts';

/** One figure as text. */
export interface TableLine {
  readonly quantity: string;
  readonly unit: string;
  readonly printed: string;
  readonly ours: string;
  readonly difference: string;
  readonly agrees: boolean;
}

/** The figures of one case, under its citation. */
export interface TableCase {
  readonly citation: string;
  readonly status: Status;
  readonly lines: readonly TableLine[];
}

/** One topic of the cases. */
export interface TopicTable {
  readonly topic: string;
  readonly sources: number;
  readonly cases: readonly TableCase[];
}

const typeset = (text: string) => text.replaceAll("'", '’');

const lineOf = (row: CheckRow): TableLine => ({
  quantity: typeset(row.quantity),
  unit: row.unit,
  printed: printedText(row),
  ours: oursText(row),
  difference: differenceText(row),
  agrees: agrees(row),
});

function caseOf(rows: readonly CheckRow[]): TableCase {
  const { citation, status } = rows[0] as CheckRow;
  return { citation: typeset(citation), status, lines: rows.map(lineOf) };
}

/** The rows by topic and case, in their own order. */
export function topicTables(rows: readonly CheckRow[]): readonly TopicTable[] {
  return [...Map.groupBy(rows, (row) => row.topic)].map(([topic, ofTopic]) => ({
    topic,
    sources: new Set(ofTopic.map(({ source }) => source)).size,
    cases: [...Map.groupBy(ofTopic, ({ caseId }) => caseId).values()].map(caseOf),
  }));
}
