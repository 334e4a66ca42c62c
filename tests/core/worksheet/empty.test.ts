import { describe, expect, it } from 'vitest';
import { emptyReading, emptyWorksheet } from '../../../src/core/worksheet/empty.ts';

describe('emptyWorksheet', () => {
  it('is of version 1 and survives being written and read', () => {
    expect(emptyWorksheet.version).toBe(1);
    expect(structuredClone(emptyWorksheet)).toEqual(emptyWorksheet);
  });

  it('holds the defaults and nothing else: 205 ± 5 GPa, ± 1 mm, one start, no lever, ± 0.1 N·m or half a bar, the lowest note, 1100 MPa, and what the window is drawn for', () => {
    const numbers: number[] = [];
    JSON.stringify({ ...emptyWorksheet, version: undefined }, (_, value) => {
      if (typeof value === 'number') numbers.push(value);
      return value;
    });
    expect(numbers).toEqual([
      205e9, 5e9, 0.5e5, 1, 1, 0.1, 1e-3, 1, 1100e6, 0.2, 30, 4e-3, 0.8, 9, 15,
    ]);
  });

  it('says nothing that nobody said: no name, no thread, no row; a steel bar', () => {
    const { label, mill, tensioner, rig, readings, ways, bands } = emptyWorksheet;
    expect([label, readings, ways, bands]).toEqual(['', [], [], []]);
    expect(Object.entries(mill)).toEqual([
      ['strands', 'two'],
      ...['stripLength', 'wheelDiameter1', 'wheelDiameter2', 'centreDistance'].map((size) => [
        size,
        undefined,
      ]),
    ]);
    expect(tensioner.kind).toBe('screw');
    const { noLoadPressureUncertainty: _, ...cylinder } = tensioner.cylinder;
    expect(Object.values(cylinder).every((value) => value === undefined)).toBe(true);
    expect(tensioner.thread).toEqual({ kind: 'designation', designation: '' });
    expect(Object.entries(tensioner.friction)).toEqual([
      ['kind', 'unknown'],
      ['low', undefined],
      ['high', undefined],
    ]);
    expect(tensioner.collar).toEqual({ kind: 'unknown' });
    expect(rig).toMatchObject({ barMaterial: 'steel', dialRunsBackwards: undefined });
  });

  it('has an empty row to start from', () =>
    expect(Object.values(emptyReading)).toEqual([undefined, undefined, undefined, undefined]));
});
