/** Numbers typed without a unit keep their meaning when the site's units change. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { typedAt, withTyped } from '../../src/form/edits.ts';
import { readWorksheet } from '../../src/form/reading.ts';
import { blankText } from '../../src/form/text.ts';
import { bareUnits, inUnits } from '../../src/form/units.ts';

const [metric, us] = [bareUnits('metric'), bareUnits('us')];
const withWidth = (typed: string) => withTyped(blankText, 'band.bodyWidth', typed);

describe('a change of units', () => {
  it.each([
    ['29', '29 mm'],
    ['1 1/4', '1 1/4 mm'],
    ['1.25 in', '1.25'],
    ['29 mm', '29 mm'],
    ['about 29', 'about 29'],
    ['1,200', '1,200'],
    ['', ''],
  ])('from metric writes %j as %j', (typed, written) =>
    expect(typedAt(inUnits(withWidth(typed), metric, us), 'band.bodyWidth')).toBe(written),
  );

  it('leaves what has no unit alone', () => {
    const text = withTyped(
      withTyped(blankText, 'tensioner.starts', '2'),
      'readings.0.wholeTurns',
      '1',
    );
    expect(inUnits(text, metric, us)).toEqual(text);
  });

  it('and back is as it was', () => {
    const text = withTyped(withWidth('20-3/4'), 'ways.0.readings.0.dial', '0.355');
    expect(inUnits(inUnits(text, metric, us), us, metric)).toEqual(
      withTyped(withWidth('20-3/4'), 'ways.0.readings.0.dial', '0.355'),
    );
  });

  it('never changes a value', () =>
    fc.assert(
      fc.property(fc.double({ min: 12, max: 120, noNaN: true }), (width) => {
        const text = withWidth(String(width));
        const before = readWorksheet(text, 'metric').worksheet.band.bodyWidth;
        const after = readWorksheet(inUnits(text, metric, us), 'us').worksheet.band.bodyWidth;
        expect(after).toBe(before);
      }),
    ));
});
