/** The board's rows: names that tell learners apart, room, order. */
import { describe, expect, it } from 'vitest';
import {
  EMPTY,
  MOST,
  measuredRows,
  ownName,
  type ReadSheet,
  rowsInOrder,
  withSheet,
} from '../../../src/teaching/board/row.ts';

const waits = { waits: { metric: 'Waits.', us: 'Waits.' } };
const sheet = (label: string, stress?: number): ReadSheet => ({
  label,
  from: `${label}.json`,
  verdict: 'good',
  stress: stress === undefined ? waits : { value: stress, expanded: 1, own: 1 },
  efficiency: waits,
  topTorque: stress === undefined ? undefined : 50,
});

describe('a name on the board', () => {
  it.each([
    ['Ann', [], 'Ann'],
    ['Ann', ['Ann'], 'Ann (2)'],
    ['Ann', ['Ann', 'Ann (2)'], 'Ann (3)'],
    ['', [], 'No name'],
    [' \u202e\n ', ['No name'], 'No name (2)'],
    ['two\nlines', [], 'two lines'],
  ])('%j beside %j is %j', (label, taken, name) => expect(ownName(label, taken)).toBe(name));

  it('is cut where it would fill the board', () =>
    expect(ownName('x'.repeat(5000), [])).toHaveLength(MOST.letters));
});

describe('the board', () => {
  const sheets = [sheet('Ann', 3), sheet('Ann'), sheet('Ann', 1), sheet('Bea', 2)];
  const board = sheets.reduce(withSheet, EMPTY);

  it('has the lowest stress first, and last what waits', () => {
    expect(measuredRows(board).map(({ name }) => name)).toEqual(['Ann (3)', 'Bea', 'Ann']);
    expect(rowsInOrder(board).map(({ name }) => name)).toEqual([
      'Ann (3)',
      'Bea',
      'Ann',
      'Ann (2)',
    ]);
  });

  it('takes no more than it has room for', () => {
    const many = Array.from({ length: MOST.sheets + 5 }, () => sheet('Ann', 1));
    const { rows } = many.reduce(withSheet, EMPTY);
    expect(rows).toHaveLength(MOST.sheets);
    expect(new Set(rows.map(({ name }) => name)).size).toBe(MOST.sheets);
  });
});
