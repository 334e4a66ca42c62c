/** Every figure that a source prints, against ours; and nothing of the cases is passed over in silence. */
import { describe, expect, it } from 'vitest';
import { allAnswers } from './all-answers.ts';
import { numberPaths, publishedCases } from './cases.ts';
import { differenceText, oursText, printedText } from './row-text.ts';
import {
  agrees,
  type CheckRow,
  checkRows,
  constructedRows,
  publishedRows,
  rememberedRows,
  solvedRows,
} from './rows.ts';
import { type Unused, unused } from './unused.ts';

const nameOf = ({ caseId, path }: Pick<CheckRow, 'caseId' | 'path'>): string =>
  `${caseId} > ${path}`;
const covers = ({ cases, paths }: Unused, id: string, path: string): boolean =>
  cases.includes(id) && paths.some((beginning) => path.startsWith(beginning));

const answered = checkRows.map(nameOf);
const figures = publishedCases.flatMap(({ id, expected }) =>
  numberPaths(expected).map((path) => ({ caseId: id, path })),
);
const unanswered = figures.filter((figure) => !answered.includes(nameOf(figure)));

/** One line of the table in the output of the run. */
const line = (row: CheckRow): string =>
  [row.source, row.quantity, printedText(row), oursText(row), differenceText(row), row.unit]
    .join(' | ')
    .trimEnd();

describe('published figures', () => {
  it.each(publishedCases.filter(({ id }) => id in allAnswers))('are met: $id', ({ id }) => {
    const rows = checkRows.filter(({ caseId }) => caseId === id);
    expect(rows.length).toBeGreaterThan(0);
    expect(rows.filter((row) => !agrees(row)).map(line)).toEqual([]);
  });

  it('are each answered once', () =>
    expect(answered.filter((name, i) => answered.indexOf(name) !== i)).toEqual([]));

  it('are answered, or left out for a reason that is written down, never both or twice', () => {
    const reasons = (id: string, path: string) => unused.filter((each) => covers(each, id, path));
    const silent = unanswered.filter(({ caseId, path }) => reasons(caseId, path).length !== 1);
    expect(silent.map(nameOf)).toEqual([]);
  });

  it('have no reason written down for nothing', () => {
    const idle = unused.flatMap((each) =>
      each.paths.filter(
        (beginning) =>
          !unanswered.some(({ caseId, path }) =>
            covers({ ...each, paths: [beginning] }, caseId, path),
          ),
      ),
    );
    expect(idle).toEqual([]);
  });

  it('are many, from many sources; those from computed solutions and from memory count apart', () => {
    expect(publishedRows.length).toBeGreaterThanOrEqual(220);
    expect(new Set(publishedRows.map(({ source }) => source)).size).toBeGreaterThanOrEqual(25);
    expect(publishedRows.every(({ path }) => path.startsWith('published'))).toBe(true);
    const apart = [solvedRows, rememberedRows, constructedRows];
    expect(apart.every(({ length }) => length > 0)).toBe(true);
    expect([publishedRows, ...apart].flat()).toHaveLength(checkRows.length);
  });

  it('stand in a table: source, quantity, printed, ours, difference, unit', () => {
    const table = [...publishedRows, ...solvedRows, ...rememberedRows].map(line);
    const totals = `${publishedRows.length} printed, ${solvedRows.length} from computed solutions, ${rememberedRows.length} from memory, ${constructedRows.length} worked out to more digits`;
    console.log([...table, totals].join('\n'));
    expect(table.every((text) => !/NaN|undefined|Infinity/.test(text))).toBe(true);
  });
});

describe('the check of a figure', () => {
  it('fails for each row whose figure is moved past its tolerance', () => {
    const moved = ({ tolerance, ...row }: CheckRow): CheckRow => {
      const step = 1.01 * tolerance + 1e-9 * (Math.abs(row.printed) || 1);
      return { ...row, tolerance, ours: row.printed + step };
    };
    expect(checkRows.map(moved).filter(agrees)).toEqual([]);
  });

  it('allows no more than the half of a printed place where it says so', () => {
    const placed = checkRows.filter(({ decimals }) => decimals !== undefined);
    const slack = placed.filter(
      ({ tolerance, decimals = 0 }) => tolerance > 0.5001 * 10 ** -decimals,
    );
    expect(placed.length).toBeGreaterThan(100);
    expect(slack.map(nameOf)).toEqual([]);
  });
});
