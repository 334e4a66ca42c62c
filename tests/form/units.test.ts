/** Numbers typed without a unit keep their meaning when the site's units change. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sheetReader } from '../../src/form/reading.ts';
import { blank, type Typed, typedAt, typedFrom, withTyped } from '../../src/form/typed.ts';
import { bareUnits, inUnits } from '../../src/form/units.ts';
import type { UnitSystem } from '../../src/units/kinds.ts';
import { anySheet } from './random-sheet.ts';

const [metric, us] = [bareUnits('metric'), bareUnits('us')];
const withWidth = (typed: string) => withTyped(blank, 'band.bodyWidth', typed);

/** All numbers of a sheet in SI, and which of its boxes are refused. */
function meaningOf(typed: Typed, system: UnitSystem) {
  const { worksheet, refusals } = sheetReader()(typed, system);
  return { worksheet, refused: Object.keys(refusals) };
}

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
    const typed = typedFrom([
      ['tensioner.starts', '2'],
      ['readings.0.wholeTurns', '1'],
    ]);
    expect(inUnits(typed, metric, us)).toEqual(typed);
  });

  it('and back is as it was', () => {
    const typed = typedFrom([
      ['band.bodyWidth', '20-3/4'],
      ['ways.0.readings.0.dial', '0.355'],
    ]);
    expect(inUnits(inUnits(typed, metric, us), us, metric)).toEqual(typed);
  });

  it('never changes what a sheet means', () =>
    fc.assert(
      fc.property(anySheet, (typed) => {
        expect(meaningOf(inUnits(typed, metric, us), 'us')).toEqual(meaningOf(typed, 'metric'));
      }),
    ));
});
