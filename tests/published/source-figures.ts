/** How many figures of a source are checked, counted by how its cases were seen. */
import { checkRows, type Status } from './rows.ts';

/** One way of having been seen, and the figures seen so. */
export interface CountedFigures {
  readonly status: Status;
  readonly count: number;
}

/** The compared figures of all cases whose id begins in one of these ways, those worked out to more digits left out. */
export function figuresOf(beginnings: readonly string[]): readonly CountedFigures[] {
  const rows = checkRows.filter(
    ({ caseId, status }) =>
      status !== 'constructed' && beginnings.some((beginning) => caseId.startsWith(beginning)),
  );
  return [...Map.groupBy(rows, ({ status }) => status)].map(([status, { length }]) => ({
    status,
    count: length,
  }));
}
