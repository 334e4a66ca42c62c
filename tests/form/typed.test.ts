/** What is typed, and the changes to it: each gives a new sheet and forgets nothing else. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FieldPath } from '../../src/form/paths.ts';
import {
  blank,
  chosenAt,
  entriesOf,
  isBlank,
  rowCount,
  type Typed,
  typedAt,
  typedFrom,
  withNewRow,
  without,
  withoutRow,
  withTyped,
} from '../../src/form/typed.ts';
import { anySheet, anyTyping } from './random-sheet.ts';

const sheet = (entries: Readonly<Record<string, string>>): Typed =>
  typedFrom(Object.entries(entries));

describe('typing', () => {
  it('is read back, and leaves every other box alone', () =>
    fc.assert(
      fc.property(anySheet, anyTyping, (typed, [path, text]) => {
        const next = withTyped(typed, path, text);
        expect(typedAt(without(next, path), path)).toBe('');
        expect(without(next, path)).toEqual(without(typed, path));
        expect([text, '']).toContain(typedAt(next, path)); // a choice as at the start is not there
      }),
    ));

  it('the same again, or what may not be chosen, changes nothing', () => {
    const typed = sheet({ 'band.thickness': '1', 'rig.barMaterial': 'wood' });
    expect(withTyped(typed, 'band.thickness', '1')).toBe(typed);
    expect(withTyped(typed, 'rig.barMaterial', 'cheese')).toBe(typed);
    expect(withTyped(typed, 'rig.barMaterial', 'toString')).toBe(typed);
    expect(withTyped(typed, 'band.colour' as FieldPath, 'red')).toBe(typed);
  });

  it('chooses, and goes back to the start', () => {
    expect(chosenAt(blank, 'rig.dialRuns')).toBe('unasked');
    const typed = withTyped(blank, 'rig.dialRuns', 'forwards');
    expect(chosenAt(typed, 'rig.dialRuns')).toBe('forwards');
    expect(withTyped(typed, 'rig.dialRuns', 'unasked')).toEqual(blank);
  });

  it('makes a sheet that is no longer blank; a choice alone does not', () => {
    expect(isBlank(withTyped(blank, 'rig.barMaterial', 'wood'))).toBe(true);
    expect(isBlank(withTyped(blank, 'label', 'M'))).toBe(false);
  });
});

describe('rows', () => {
  const typed = sheet({
    label: 'M',
    'readings.0.torque': '1',
    'readings.2.dial': '3',
    'ways.1.name': 'mark',
    'ways.1.readings.4.dial': '5',
  });

  it('are counted up to the last with something in it', () => {
    expect(rowCount(typed, 'readings')).toBe(3);
    expect(rowCount(typed, 'ways')).toBe(2);
    expect(rowCount(typed, 'ways.1.readings')).toBe(5);
    expect(rowCount(typed, 'ways.0.readings')).toBe(0);
  });

  it('move up where one is taken out, with all that they hold', () => {
    expect(withoutRow(typed, 'ways', 0)).toEqual(
      sheet({
        label: 'M',
        'readings.0.torque': '1',
        'readings.2.dial': '3',
        'ways.0.name': 'mark',
        'ways.0.readings.4.dial': '5',
      }),
    );
    expect(typedAt(withoutRow(typed, 'readings', 2), 'readings.2.dial')).toBe('');
  });

  it('move down where one is put in, and back', () =>
    fc.assert(
      fc.property(anySheet, fc.nat(11), (any, row) => {
        for (const list of ['readings', 'ways', 'ways.0.readings'] as const) {
          if (rowCount(any, list) < 12)
            expect(withoutRow(withNewRow(any, list, row), list, row)).toEqual(any);
        }
      }),
    ));

  it('of a full list stay', () => {
    const full = withTyped(blank, 'ways.11.name', 'last');
    expect(withNewRow(full, 'ways', 0)).toBe(full);
  });
});

describe('clearing', () => {
  it('takes everything at a path and under it, and no more', () => {
    const typed = sheet({ 'readings.1.dial': '1', 'readings.10.dial': '2', label: 'M' });
    expect(without(typed, 'readings.1')).toEqual(sheet({ 'readings.10.dial': '2', label: 'M' }));
    expect(entriesOf(without(typed, 'readings'))).toEqual([['label', 'M']]);
  });
});
