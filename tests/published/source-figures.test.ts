/** What the list of sources says of its checks is true of the cases. */
import { describe, expect, it } from 'vitest';
import { fieldsOf, listOf } from '../structure/content-files.ts';
import { textOf } from '../structure/project-files.ts';
import { publishedCases } from './cases.ts';
import { publishedRows, rememberedRows, solvedRows } from './rows.ts';
import { figuresOf } from './source-figures.ts';

const counted = (beginnings: readonly string[]): number =>
  figuresOf(beginnings).reduce((sum, { count }) => sum + count, 0);

const checkedSources = textOf('content/sources.yaml')
  .split(/^(?=\S)/m)
  .map((text) => ({
    key: text.slice(0, text.indexOf(':')),
    seen: fieldsOf(text, 'seen')[0],
    checks: listOf(text, 'checks'),
  }))
  .filter(({ checks }) => checks.length > 0);

describe('figuresOf', () => {
  it('counts the figures of the cases that begin so', () => {
    expect(figuresOf(['beer-johnston-8-7'])).toEqual([{ status: 'solved', count: 2 }]);
    expect(figuresOf(['s1-9-5', 's1-9-3'])).toEqual([
      { status: 'from memory', count: 6 },
      { status: 'in part', count: 2 },
    ]);
  });

  it('counts none where no case begins so', () => expect(figuresOf(['nobody-'])).toEqual([]));

  it('counts every printed, solved and remembered figure', () => {
    const all = publishedCases.map(({ id }) => id);
    expect(counted(all)).toBe(publishedRows.length + solvedRows.length + rememberedRows.length);
  });
});

describe('sources that name their cases', () => {
  it('have figures in each way that they name', () => {
    expect(checkedSources.length).toBeGreaterThan(0);
    const empty = checkedSources.flatMap(({ checks }) => checks.filter((each) => !counted([each])));
    expect(empty).toEqual([]);
  });

  it('share no case', () => {
    const beginnings = checkedSources.flatMap(({ checks }) => checks);
    const inTwo = publishedCases.filter(
      ({ id }) => beginnings.filter((each) => id.startsWith(each)).length > 1,
    );
    expect(inTwo.map(({ id }) => id)).toEqual([]);
  });

  it('are not said to be seen better than their figures were', () => {
    const statuses = ({ checks }: { checks: readonly string[] }) =>
      figuresOf(checks).map(({ status }) => status);
    const inPrint = checkedSources.filter(({ seen }) => seen === 'in print').flatMap(statuses);
    const remembered = checkedSources.filter(({ seen }) => seen === 'from memory');
    expect([...new Set(inPrint)]).toEqual(['seen in print']);
    expect([...new Set(remembered.flatMap(statuses))]).toEqual(['from memory']);
  });
});
