/** The worksheet's own file form: it survives a journey, and what is none of ours is refused. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DOCUMENT_FORMAT, documentOf, typedOf } from '../../src/form/document.ts';
import { readDocument } from '../../src/form/schema.ts';
import { entriesOf, typedFrom, withTyped } from '../../src/form/typed.ts';
import { bareUnits } from '../../src/form/units.ts';
import { anySheet } from './random-sheet.ts';

const filled = typedFrom([
  ['label', 'Mill'],
  ['tensioner.thread.designation', 'M20'],
  ['band.bodyWidth', '1 1/4'],
  ['readings.2.dial', '.0625'],
  ['ways.0.name', 'mark'],
  ['ways.0.readings.1.dial', '.05'],
]);

describe('a document', () => {
  it('gives back exactly what was typed, in the same units', () =>
    fc.assert(
      fc.property(anySheet, (typed) => {
        const units = bareUnits('us');
        const sent = JSON.parse(JSON.stringify(documentOf(typed, units)));
        const read = readDocument(sent);
        if (typeof read === 'string') throw new Error(read);
        expect(typedOf(read.document, units)).toEqual(typed);
        expect(read.setAside).toEqual([]);
      }),
    ));

  it('is the same to the letter in whatever order the boxes were filled', () => {
    const turned = typedFrom([...entriesOf(filled)].reverse());
    expect(JSON.stringify(documentOf(turned, {}))).toBe(JSON.stringify(documentOf(filled, {})));
  });

  it('names the columns of its tables, and leaves out empty rows at the end', () => {
    const { tables } = documentOf(withTyped(filled, 'readings.9.dial', ''), {});
    expect(tables['readings']).toEqual([
      ['torque', 'dial', 'wholeTurns', 'turns', 'series', 'struck'],
      ['', '', '', '', '', ''],
      ['', '', '', '', '', ''],
      ['', '.0625', '', '', '', ''],
    ]);
    expect(Object.keys(tables)).toEqual(['readings', 'ways', 'ways.0.readings']);
  });
});

describe('what comes from outside', () => {
  const good = JSON.parse(JSON.stringify(documentOf(filled, bareUnits('metric'))));

  it.each([
    ['nothing', undefined, 'notOurs'],
    ['a number', 7, 'notOurs'],
    ['another format', { ...good, format: 'x' }, 'notOurs'],
    ['a later version', { ...good, version: 4 }, 'newerVersion'],
    ['a version that never was', { ...good, version: 0 }, 'damaged'],
    ['version 1 without its parts', { format: DOCUMENT_FORMAT, version: 1 }, 'damaged'],
    ['version 2 without its parts', { format: DOCUMENT_FORMAT, version: 2 }, 'damaged'],
    ['version 3 without its parts', { format: DOCUMENT_FORMAT, version: 3 }, 'damaged'],
    [
      'version 2 without one good box, whatever it had preset',
      { ...good, version: 2, typed: { 'band.colour': 'red' }, tables: {} },
      'damaged',
    ],
    [
      'a sheet without one good box',
      { ...good, typed: { 'band.colour': 'red' }, tables: {} },
      'damaged',
    ],
  ])('is refused: %s', (_, value, reason) => expect(readDocument(value)).toBe(reason));

  it('never throws', () =>
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(() => readDocument(value)).not.toThrow();
        expect(() => readDocument({ ...good, typed: value })).not.toThrow();
        expect(() => readDocument({ ...good, tables: value })).not.toThrow();
      }),
    ));
});
