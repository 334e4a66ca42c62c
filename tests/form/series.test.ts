/** Rows of several series are counted within their own. */
import { describe, expect, it } from 'vitest';
import { numberInSeries, rowNamer, seriesStarts } from '../../src/form/series.ts';
import { typedFrom } from '../../src/form/typed.ts';

const starts = (series: Readonly<Record<number, string>>) =>
  seriesStarts(
    typedFrom(Object.entries(series).map(([row, text]) => [`readings.${row}.series`, text])),
  );

describe('a row', () => {
  it('of one series alone is called by its number', () => {
    expect(rowNamer()(11)).toBe('row 12');
    expect(rowNamer(starts({ 0: '1' }))(11)).toBe('row 12');
  });

  it('of a second series counts from 1 again, and says which series', () => {
    const two = starts({ 10: '2' });
    expect([0, 9, 10, 19].map((row) => numberInSeries(row, two))).toEqual([1, 10, 1, 10]);
    expect(rowNamer(two)(9)).toBe('row 10 of series 1');
    expect(rowNamer(two)(12)).toBe('row 3 of series 2');
  });

  it('begins no series where the number of the one above is written again', () =>
    expect(starts({ 0: '1', 1: '1', 4: '2', 5: '2', 10: '3' })).toEqual([
      { row: 0, series: '1' },
      { row: 4, series: '2' },
      { row: 10, series: '3' },
    ]));

  it('is found whatever the order in which the boxes were filled', () =>
    expect(
      seriesStarts(
        typedFrom([
          ['readings.20.series', '3'],
          ['readings.9.series', '2'],
        ]),
      ).map(({ row }) => row),
    ).toEqual([9, 20]));
});
