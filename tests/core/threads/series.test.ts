import { describe, expect, it } from 'vitest';
import {
  acmeRows,
  metricRows,
  trapezoidalRows,
  unifiedCoarseRows,
  unifiedFineRows,
} from '../../../src/core/threads/series.ts';

const inchLists = { unifiedCoarseRows, unifiedFineRows, acmeRows };

/** The inches that `1 1/8` stands for, worked out from the text. */
function written(text: string): number {
  const parts = text.split(' ').map((part) => part.split('/').map(Number));
  return parts.reduce((sum, [over = 0, under = 1]) => sum + over / under, 0);
}

describe('the lists', () => {
  it('agree with printed sizes of ISO 262: M20 2.5, M24 3, M30 3.5, M36 4, M48 5', () =>
    expect([20, 24, 30, 36, 48].map((size) => metricRows.find(([d]) => d === size)?.[1])).toEqual([
      2.5, 3, 3.5, 4, 5,
    ]));
  it('put the coarse pitch of a metric thread first', () => {
    for (const [, coarse, ...fine] of metricRows)
      for (const pitch of fine) expect(pitch).toBeLessThan(coarse);
  });
  it('agree with printed sizes of ISO 2904: Tr16x4, Tr24x5, Tr36x6, Tr44x7', () => {
    for (const [diameter, pitch] of [
      [16, 4],
      [24, 5],
      [36, 6],
      [44, 7],
    ] as const)
      expect(trapezoidalRows.find(([d]) => d === diameter)).toContain(pitch);
  });
  it.each(Object.entries(inchLists))('say the same inches twice in %s', (_, rows) => {
    for (const [text, diameter] of rows) expect(written(text)).toBe(diameter);
  });
  it.each(Object.entries({ ...inchLists, metricRows, trapezoidalRows }))(
    'name no size of %s twice, and rise',
    (_, rows) => {
      const sizes = rows.map((row) => (typeof row[0] === 'string' ? Number(row[1]) : row[0]));
      expect(sizes).toEqual([...new Set(sizes)].sort((a, b) => a - b));
    },
  );
});
