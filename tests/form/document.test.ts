/** The worksheet's own file form: it survives a journey, and the readers of old versions stay. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { documentOf, textOf } from '../../src/form/document.ts';
import { withChoice, withTyped } from '../../src/form/edits.ts';
import { readDocument } from '../../src/form/schema.ts';
import { blankText } from '../../src/form/text.ts';
import { bareUnits } from '../../src/form/units.ts';

/** A file as version 1 wrote it: this text must open for ever. */
const VERSION_1 = `{"format":"tension-notebook worksheet","version":1,"units":{"length":"mm","torque":"N·m","stretch":"mm"},
"label":"Old mill","thread":"Tr20x4","boxes":{"band.bodyWidth":"29","band.thickness":"1"},"choices":{"collar":"collar"},
"readings":[["1.5","0.470","0",""],["3","0.475","",""]],"ways":[{"name":"mark","torque":"12","readings":[["0.4","0"]]}]}`;

const filled = [
  ['label', 'Mill'],
  ['tensioner.thread.designation', 'M20'],
  ['band.bodyWidth', '1 1/4'],
  ['readings.2.dial', '.0625'],
  ['ways.0.name', 'mark'],
  ['ways.0.readings.1.dial', '.05'],
].reduce((text, [path = '', typed = '']) => withTyped(text, path, typed), blankText);

describe('a document', () => {
  it('of version 1 opens, with its units written out where the boxes show others', () => {
    const document = readDocument(JSON.parse(VERSION_1));
    if (typeof document === 'string') throw new Error(document);
    const text = textOf(document, bareUnits('us'));
    expect(text.boxes['band.bodyWidth']).toBe('29 mm');
    expect(text.readings[0]).toEqual({
      torque: '1.5 N·m',
      dial: '0.470 mm',
      wholeTurns: '0',
      turns: '',
    });
    expect(text.choices.collar).toBe('collar');
    expect(text.ways[0]?.torque).toBe('12 N·m');
  });

  it('gives back exactly what was typed, in the same units', () => {
    const units = bareUnits('us');
    const text = withChoice(filled, 'bar', 'wood');
    const sent = JSON.parse(JSON.stringify(documentOf(text, units)));
    const document = readDocument(sent);
    if (typeof document === 'string') throw new Error(document);
    expect(textOf(document, units)).toEqual(text);
  });

  it('leaves out empty rows at the end', () =>
    expect(documentOf(withTyped(filled, 'readings.9.dial', ''), {}).readings).toHaveLength(3));
});

describe('what comes from outside', () => {
  const good = JSON.parse(VERSION_1);

  it.each([
    ['nothing', undefined, 'notOurs'],
    ['a number', 7, 'notOurs'],
    ['another format', { ...good, format: 'x' }, 'notOurs'],
    ['a later version', { ...good, version: 2 }, 'newerVersion'],
    ['a version that never was', { ...good, version: 0 }, 'damaged'],
    ['a box that does not exist', { ...good, boxes: { 'band.colour': 'red' } }, 'damaged'],
    ['a box of the prototype', { ...good, boxes: { constructor: '1' } }, 'damaged'],
    ['a choice that does not exist', { ...good, choices: { bar: 'cheese' } }, 'damaged'],
    ['too many rows', { ...good, readings: Array(61).fill(['1']) }, 'damaged'],
    ['a text without end', { ...good, label: 'x'.repeat(201) }, 'damaged'],
    ['rows that are no lists', { ...good, readings: ['1'] }, 'damaged'],
  ])('is refused: %s', (_, value, reason) => expect(readDocument(value)).toBe(reason));

  it('never throws', () =>
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(() => readDocument(value)).not.toThrow();
        expect(() => readDocument({ ...good, boxes: value })).not.toThrow();
      }),
    ));
});
