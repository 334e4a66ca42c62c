/** A class's scores: typed, pasted, read, and what they come to in words. */
import { describe, expect, it } from 'vitest';
import { gainWords } from '../../../src/teaching/gain/result.ts';
import { pasted, readRow, startingRows, typed } from '../../../src/teaching/gain/scores.ts';

const EMPTY = { before: '', after: '' };

const four = startingRows(4);

describe('the table of scores', () => {
  it('has an empty row left wherever one types', () => {
    const once = typed(four, 0, 'before', '3');
    expect(once).toHaveLength(four.length);
    const last = typed(once, four.length - 1, 'after', '7');
    expect(last.at(-1)).toEqual(EMPTY);
    expect(last).toHaveLength(four.length + 1);
  });

  it('takes two columns from a spreadsheet, with or without names before them', () => {
    const rows = pasted(four, 0, 'before', 'A. N.\t3\t7\r\nB.\t4\t9\r\n');
    expect(rows?.slice(0, 3)).toEqual([
      { before: '3', after: '7' },
      { before: '4', after: '9' },
      EMPTY,
    ]);
  });

  it('takes one column into the one where it is pasted', () => {
    const before = pasted(four, 1, 'before', '3\n4') ?? [];
    const both = pasted(before, 1, 'after', '8\n9');
    expect(both?.slice(0, 3)).toEqual([
      EMPTY,
      { before: '3', after: '8' },
      { before: '4', after: '9' },
    ]);
  });

  it('leaves a single number to its box, and takes no more than there is room for', () => {
    expect(pasted(four, 0, 'before', '7')).toBeUndefined();
    const many = pasted(four, 0, 'before', '1 2\n'.repeat(500));
    expect(many).toHaveLength(60);
  });
});

describe('a row', () => {
  it('is two shares of the questions', () =>
    expect(readRow({ before: '3', after: '8' }, 10)).toEqual({
      scores: { before: 0.3, after: 0.8 },
      troubles: {},
    }));

  it('is nothing while it is empty', () => expect(readRow(EMPTY, 10)).toEqual({ troubles: {} }));

  it('with one score is no trouble, only half a row', () => {
    expect(readRow({ before: '3', after: ' ' }, 10)).toEqual({ isHalf: true, troubles: {} });
    expect(readRow({ before: '', after: '99' }, 10)).toEqual({
      isHalf: true,
      troubles: { after: expect.stringContaining('“99” does not fit') },
    });
  });

  it.each([
    [{ before: '11', after: '3' }, { before: expect.stringContaining('“11” does not fit') }],
    [
      { before: 'x', after: '2.5' },
      { before: expect.any(String), after: expect.any(String) },
    ],
  ])('%o is told beside its boxes', (row, troubles) => {
    expect(readRow(row, 10)).toEqual({ troubles });
  });
});

describe('the words for a class', () => {
  it('wait for two learners', () =>
    expect(gainWords([{ before: 0.1, after: 0.5 }], 0).finding).toMatch(/at least two learners/));

  it('say that nothing was left to gain', () => {
    const all = { before: 1, after: 0.9 };
    expect(gainWords([all, all], 0).finding).toMatch(/nothing left to gain/);
  });

  it('say the gain with its uncertainty, and its band', () => {
    const { finding, details } = gainWords(
      [
        { before: 0.2, after: 0.6 },
        { before: 0.4, after: 0.6 },
        { before: 0.3, after: 0.7 },
      ],
      2,
    );
    // Averages 0.3 and 0.633…: g = 0.476…; e = 0.707, 0.558, 0.776 by hand, s(e)/√3 = 0.064.
    expect(finding.replaceAll(/\s/g, ' ')).toBe(
      'Your class gained 0.476 ± 0.064. That is medium: from 0.3 to 0.7.',
    );
    expect(details.at(-1)).toBe('2 learners have one score only and are left out.');
    expect(details[0]?.replaceAll(/\s/g, ' ')).toBe(
      '3 learners: 30 % right before, 63 % right after.',
    );
  });
});
