/** Paths of the form: misspelt ones stop the type check, and those from outside are looked up. */
import { describe, expect, it } from 'vitest';
import {
  type BoxPath,
  type ChoicePath,
  cellsOf,
  type FieldPath,
  findField,
  isFieldPath,
  namesUnder,
  type OptionOf,
  patternOf,
  rowsOnTheWay,
} from '../../src/form/paths.ts';

describe('paths', () => {
  it('that are misspelt are refused by the type check', () => {
    const good: readonly FieldPath[] = ['label', 'readings.3.dial', 'ways.0.readings.1.wholeTurns'];
    // @ts-expect-error no such part
    const part: FieldPath = 'bend.bodyWidth';
    // @ts-expect-error no such box
    const box: BoxPath = 'band.bodyWith';
    // @ts-expect-error no such cell
    const cell: FieldPath = `readings.${3 as number}.dail`;
    // @ts-expect-error a row has a number
    const row: FieldPath = 'readings.x.dial';
    // @ts-expect-error a box is no choice
    const choice: ChoicePath = 'band.bodyWidth';
    // @ts-expect-error no such option
    const option: OptionOf<'rig.barMaterial'> = 'cheese';
    expect(good.every(isFieldPath)).toBe(true);
    expect([part, box, cell, row, option].filter(isFieldPath)).toEqual([]);
    expect(findField(choice)).not.toHaveProperty('options');
  });

  it.each([
    'toString',
    'constructor',
    '__proto__',
    'readings',
    'readings.*.dial',
    'readings.0',
    'readings.00.dial',
    'readings.-1.dial',
    'readings.1e1.dial',
    'readings.2000.dial',
    'ways.12.name',
    'ways.0.readings.12.dial',
    'band.bodyWidth.0',
  ])('from outside that are none are not found: %s', (path) =>
    expect(findField(path)).toBeUndefined(),
  );

  it('are found up to the last row that a list may have', () => {
    expect(findField('readings.199.dial')).toMatchObject({ kind: 'stretch' });
    expect(findField('ways.11.readings.11.dial')).toMatchObject({ kind: 'stretch' });
  });

  it('come apart into lists and rows', () => {
    expect(patternOf('ways.3.readings.12.dial')).toBe('ways.*.readings.*.dial');
    expect(patternOf('mill.wheelDiameter1')).toBe('mill.wheelDiameter1');
    expect(rowsOnTheWay('ways.3.readings.12.dial')).toEqual([
      ['ways', '3'],
      ['ways.3.readings', '12'],
    ]);
  });

  it('list what lies under them', () => {
    expect(cellsOf('readings')).toEqual([
      ...['torque', 'dial', 'wholeTurns', 'turns'],
      ...['series', 'struck', 'pressure'],
    ]);
    expect(cellsOf('ways.4.readings')).toEqual(['dial', 'wholeTurns']);
    expect(namesUnder('tensioner.friction')).toEqual(['kind', 'low', 'high']);
  });
});
