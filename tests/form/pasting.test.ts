/** Where pasted cells go, and that whatever is not taken is named. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pastedTable } from '../../src/form/pasted-table.ts';
import { leftOut, placedTexts, replacedRows } from '../../src/form/pasting.ts';
import type { FieldPath } from '../../src/form/paths.ts';
import { rowNamer } from '../../src/form/series.ts';
import { blank, cellsIn, rowCount, typedAt, typedFrom, withTexts } from '../../src/form/typed.ts';
import { leftOutSentence, replacedSentence } from '../../src/worksheet/words/table-words.ts';

const sheet = (entries: Readonly<Record<string, string>>) => typedFrom(Object.entries(entries));
const withTable = (path: FieldPath, rows: readonly (readonly string[])[]) =>
  withTexts(blank, placedTexts(path, rows));
const numbered = (count: number) => Array.from({ length: count }, (_, at) => [`${at + 1}`]);

describe('pasting', () => {
  it('fills to the right and down', () => {
    const pasted = withTable('readings.1.dial', [['0.4', '0', '0.1', 'extra'], ['0.5']]);
    expect(pasted).toEqual(
      sheet({
        'readings.1.dial': '0.4',
        'readings.1.wholeTurns': '0',
        'readings.1.turns': '0.1',
        'readings.2.dial': '0.5',
      }),
    );
  });

  it('takes 2000 rows, and names each that it does not take', () => {
    const rows = numbered(2305);
    rows[2100] = [''];
    const many = withTable('readings.0.torque', rows);
    expect(rowCount(many, 'readings')).toBe(2000);
    expect(typedAt(many, 'readings.1999.torque')).toBe('2000');
    const left = leftOut('readings.0.torque', rows);
    expect(left && leftOutSentence(left)).toBe(
      'Rows 2001 to 2100, 2102 to 2305 were not taken: the sheet holds 2000 readings.',
    );
    expect(left?.text.split('\n')).toHaveLength(304);
    expect(left?.text).toMatch(/^2001\n2002\n.*\n2305$/s);
  });

  it('names cells without a column, too long, or with a line break, and keeps their text', () => {
    const rows = pastedTable(`1\t2\t3\t4\tfive\n${'9'.repeat(101)}\t6\n"7\n8"\t9`);
    expect(cellsIn(withTable('readings.0.torque', rows), 'readings')).toEqual([
      ['1', '2', '3', '4', '', '', ''],
      ['', '6', '', '', '', '', ''],
      ['', '9', '', '', '', '', ''],
    ]);
    const left = leftOut('readings.0.torque', rows);
    expect(left && leftOutSentence(left)).toBe(
      '3 cells were not taken: too long, or without a column here.',
    );
    expect(left?.text).toBe(`five\n${'9'.repeat(101)}\n7\n8`);
  });

  it('over filled boxes says which rows it replaces, and none where the text is the same', () => {
    const before = sheet({
      'readings.0.torque': '7',
      'readings.0.dial': '0.4',
      'readings.2.dial': '9',
    });
    const standsAt = (path: string) => typedAt(before, path as FieldPath);
    const rowsOf = (rows: readonly (readonly string[])[]) =>
      replacedRows(placedTexts('readings.0.torque', rows), standsAt);
    expect(rowsOf([['1', '0.4'], ['2'], ['3', '0.6']])).toEqual([0, 2]);
    expect(rowsOf([['7', '0.4'], ['2'], ['3']])).toEqual([]);
    const says = (rows: readonly number[]) =>
      replacedSentence('readings.0.torque', rows, rowNamer([{ row: 2, series: '2' }]));
    expect(says([0, 2])).toMatch(/^This replaced what stood in row 1 of series 1 and 1 more: undo/);
    expect(says([])).toBe('');
  });

  it('names nothing where all is taken', () =>
    expect(leftOut('readings.3.dial', [['1', '', ''], ['']])).toBeUndefined());

  it('takes or names every cell', () =>
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.stringMatching(/^\d{1,3}$/), { maxLength: 4 }), { maxLength: 20 }),
        fc.nat(14),
        (rows, row) => {
          const path = `ways.0.readings.${Math.min(row, 11)}.dial` as const;
          const pasted = withTable(path, rows);
          const taken = cellsIn(pasted, 'ways.0.readings').flat().filter(Boolean);
          const left = (leftOut(path, rows)?.text ?? '').split(/[\t\n]/).filter(Boolean);
          expect([...taken, ...left].sort()).toEqual(rows.flat().sort());
        },
      ),
    ));

  it('takes the place of what was there, with empty cells too', () => {
    const typed = sheet({ 'readings.0.torque': '9', 'readings.0.dial': '9' });
    expect(withTexts(typed, placedTexts('readings.0.torque', [['1', '']]))).toEqual(
      sheet({ 'readings.0.torque': '1' }),
    );
  });

  it('into a box that is in no list changes nothing', () =>
    expect(withTable('band.thickness', [['1', '2']])).toBe(blank));
});
