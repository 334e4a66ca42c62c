import { describe, expect, it } from 'vitest';
import { differenceText, oursText, printedText } from './row-text.ts';
import { type CheckRow, publishedRows } from './rows.ts';
import { topicTables } from './table.ts';

const anyRow = publishedRows[0] as CheckRow;
const row = (printed: number, ours: number, tolerance: number, decimals?: number): CheckRow => ({
  ...anyRow,
  ...{ printed, ours, tolerance, decimals },
});

describe('the text of a row', () => {
  it('keeps the zeros that a source prints, where it is known how many', () => {
    expect(printedText(row(1.2, 1.1969, 0.005, 2))).toBe('1.20');
    expect(printedText(row(26.18, 26.177, 0.005))).toBe('26.18');
  });

  it('shows ours to a place beyond what is allowed, and no shorter than the printed one', () => {
    expect(oursText(row(1.2, 1.19688, 0.005, 2))).toBe('1.1969');
    expect(oursText(row(1809, 1814.4067, 6))).toBe('1814.4');
    expect(oursText(row(0.884796396144373, 0.8847963961443861, 1e-11))).toBe('0.884796396144386');
    expect(oursText(row(34, 34, 0.5, 0))).toBe('34');
  });

  it('writes the very small as powers of ten, with a true minus', () => {
    expect(printedText(row(-3.1e-6, 4e-6, 1e-6))).toBe('−3.1 × 10⁻⁶');
    expect(oursText(row(1.7266e-5, 1.72662e-5, 1e-9))).toBe('1.72662 × 10⁻⁵');
    expect(differenceText(row(26.18, 26.1769, 0.005))).toBe('−0.0031');
    expect(differenceText(row(2, 2, 0))).toBe('0');
    expect(differenceText(row(0.3, 0.1 + 0.2, 1e-4))).toBe('0');
  });
});

describe('topicTables', () => {
  it('lose no row and mix no sources', () => {
    const tables = topicTables(publishedRows);
    const lines = tables.flatMap(({ cases }) => cases.flatMap((each) => each.lines));
    expect(lines).toHaveLength(publishedRows.length);
    expect(new Set(tables.map(({ topic }) => topic)).size).toBe(tables.length);
    expect(lines.every(({ agrees }) => agrees)).toBe(true);
  });
});
