/** A sheet with one bad box in each place opens with the rest, and the bad one is shown as it was found. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DOCUMENT_FORMAT, documentOf, textsOf } from '../../src/form/document.ts';
import { LISTS } from '../../src/form/lists.ts';
import { readDocument } from '../../src/form/schema.ts';
import { asideCount } from '../../src/form/set-aside.ts';
import { typedFrom } from '../../src/form/typed.ts';
import { bareUnits } from '../../src/form/units.ts';
import { PRESET_IN_VERSION_2 } from '../../src/form/versions/version-2.ts';
import { anySheet } from './random-sheet.ts';

const units = bareUnits('metric');
const filled = typedFrom([
  ['label', 'Mill'],
  ['band.bodyWidth', '29'],
  ['band.thickness', '1.1 mm'],
  ['rig.barMaterial', 'wood'],
  ['readings.0.torque', '1.5'],
  ['ways.0.name', 'mark'],
]);
const good = JSON.parse(JSON.stringify(documentOf(filled, units)));

function opened(value: unknown) {
  const read = readDocument(JSON.parse(JSON.stringify(value)));
  if (typeof read === 'string') throw new Error(read);
  return read;
}

const withBox = (path: string, value: unknown) => ({
  ...good,
  typed: { ...good.typed, [path]: value },
});
const withTable = (list: string, table: unknown) => ({
  ...good,
  tables: { ...good.tables, [list]: table },
});
const rows = LISTS.readings.most;

describe('one bad part costs only itself:', () => {
  it.each<[string, unknown, string, string]>([
    ['a box that does not exist', withBox('band.colour', 'red'), 'band.colour', 'red'],
    ['a box of the prototype', withBox('constructor', '1'), 'constructor', '1'],
    ['a number where a text stands', withBox('target.stress', 120), 'target.stress', '120'],
    ['an option that is none', withBox('rig.dialRuns', 'up'), 'rig.dialRuns', 'up'],
    ['an option of the prototype', withBox('rig.dialRuns', 'toString'), 'rig.dialRuns', 'toString'],
    ['a path without end', withBox(`band.${'x'.repeat(500)}`, '1'), `band.${'x'.repeat(500)}`, '1'],
    [
      'a text too long',
      withBox('target.stress', '1'.repeat(201)),
      'target.stress',
      '1'.repeat(201),
    ],
    ['a list that does not exist', withTable('bands', [['dial'], ['1']]), 'bands.0.dial', '1'],
    ['a table that is none', withTable('ways.0.readings', 'x'), 'ways.0.readings', 'x'],
    [
      'a column that does not exist',
      withTable('ways.0.readings', [['hue'], ['red']]),
      'ways.0.readings.0.hue',
      'red',
    ],
    [
      'a column that comes twice',
      withTable('ways.0.readings', [
        ['dial', 'dial'],
        ['', '2'],
        ['1', '3'],
      ]),
      'ways.0.readings.1.dial',
      '3',
    ],
    [
      'a cell beyond the columns',
      withTable('ways.0.readings', [['dial'], ['1', '2']]),
      'ways.0.readings.0.1',
      '2',
    ],
    [
      'a cell of the wrong kind',
      withTable('ways.0.readings', [['dial'], [{ n: 1 }]]),
      'ways.0.readings.0.dial',
      '{"n":1}',
    ],
    ['a row that is none', withTable('ways.0.readings', [['dial'], 7]), 'ways.0.readings.0', '7'],
    [
      'a row beyond the limit',
      withTable('readings', [['torque'], ['1.5'], ...Array(rows - 1).fill(['']), ['9']]),
      `readings.${rows}.torque`,
      '9',
    ],
    ['a part that is none of ours', { ...good, colour: ['red'] }, 'colour', '["red"]'],
    [
      'a unit of another kind of box',
      { ...good, units: { ...units, hue: 'red' } },
      'units.hue',
      'red',
    ],
  ])('%s', (_, value, place, text) => {
    const { document, setAside } = opened(value);
    expect(setAside).toEqual([{ place, text }]);
    expect(document).toMatchObject({ units, typed: good.typed });
    expect(textsOf(document)).toEqual(expect.arrayContaining([...textsOf(good)]));
  });

  it('a name of the prototype as JSON gives it', () => {
    const text = JSON.stringify(good).replace('"typed":{', '"typed":{"__proto__":"1",');
    const read = readDocument(JSON.parse(text));
    expect(read).toMatchObject({ setAside: [{ place: '__proto__', text: '1' }] });
  });

  it('a unit that cannot be read takes the bare numbers of its kind with it, and no others', () => {
    for (const length of ['furlong', 7, '000 mm', undefined]) {
      const { document, setAside } = opened({ ...good, units: { ...units, length } });
      expect(setAside).toContainEqual({ place: 'band.bodyWidth', text: '29' });
      expect(document.typed).toEqual({
        label: 'Mill',
        'band.thickness': '1.1 mm',
        'rig.barMaterial': 'wood',
      });
    }
  });

  it('in version 1 too, under the name that it had there', () => {
    const { document, setAside } = opened({
      format: DOCUMENT_FORMAT,
      version: 1,
      units,
      label: 5,
      boxes: { 'band.thickness': '1', 'ways.0.name': 'x' },
      choices: { bar: 'cheese', toString: 'x', dial: 'forwards' },
      readings: [['1', '2', '3', '4', '5'], 'x'],
      ways: [{ name: 'mark', hue: 'red', readings: [['1']] }, 6],
    });
    expect(document.typed).toEqual({
      ...PRESET_IN_VERSION_2,
      'band.thickness': '1',
      'rig.dialRuns': 'forwards',
      'tensioner.collar.kind': 'none',
    });
    expect(document.tables).toMatchObject({
      ways: [
        ['name', 'torque'],
        ['mark', ''],
      ],
    });
    expect(document.tables).toHaveProperty(['ways.0.readings', 1, 0], '1');
    expect(setAside.map(({ place, text }) => `${place}=${text}`).sort()).toEqual([
      'boxes.ways.0.name=x',
      'choices.toString=x',
      'label=5',
      'readings.0.4=5',
      'readings.1=x',
      'rig.barMaterial=cheese',
      'ways.0.hue=red',
      'ways.1=6',
    ]);
  });
});

describe('what is set aside', () => {
  it('is carried along by the sheet until it has been seen', () => {
    const first = opened(withBox('band.colour', 'red'));
    const again = opened(first.document);
    expect(again).toEqual(first);
    expect(
      asideCount(
        opened({ ...good, aside: { kept: [7], more: 2 } }).document.aside ?? { kept: [], more: 0 },
      ),
    ).toBe(3);
    expect(opened({ ...good, aside: { kept: 'x', more: -1 } }).document).toEqual(good);
  });

  it('is kept up to a number that can be looked through, the rest counted', () => {
    const boxes = Object.fromEntries(Array.from({ length: 9000 }, (_, at) => [`box.${at}`, '1']));
    const tables = {
      ...good.tables,
      ...Object.fromEntries(Object.keys(boxes).map((list) => [list, [['a'], ['1']]])),
    };
    const { document, setAside } = opened({ ...good, typed: { ...good.typed, ...boxes }, tables });
    expect(setAside.length).toBeLessThan(1000);
    expect(document.aside && asideCount(document.aside)).toBe(18_000);
    expect(document.typed).toEqual(good.typed);
  });

  it('is counted where it is too long or too deep to be shown', () => {
    const deep = JSON.parse('['.repeat(200_000) + ']'.repeat(200_000));
    const read = readDocument({
      ...good,
      typed: { ...good.typed, a: deep, b: 'x'.repeat(200_000) },
    });
    expect(read).toMatchObject({ setAside: [], document: { aside: { more: 2 } } });
  });
});

it('whatever one part is replaced by, every other box stays', () =>
  fc.assert(
    fc.property(anySheet, fc.jsonValue(), fc.nat(), (typed, value, pick) => {
      const whole = JSON.parse(JSON.stringify(documentOf(typed, units)));
      const paths = Object.keys(whole.typed);
      const path = paths[pick % Math.max(1, paths.length)];
      fc.pre(path !== undefined);
      const read = readDocument({ ...whole, typed: { ...whole.typed, [path]: value } });
      if (typeof read === 'string') {
        expect(Object.keys(typed)).toEqual([path]);
        return;
      }
      const { [path]: _, ...others } = whole.typed;
      expect(read.document.typed).toMatchObject(others);
      expect(read.document.tables).toEqual(whole.tables);
    }),
  ));
