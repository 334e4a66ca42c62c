/** Files, links and stores that the site wrote as version 1 open for ever, to the same text. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it, onTestFinished } from 'vitest';
import { textsOf, typedOf, type WorksheetDocument } from '../../src/form/document.ts';
import { readDocument } from '../../src/form/schema.ts';
import { bareUnits } from '../../src/form/units.ts';
import { recordsAtStart } from '../../src/worksheet/io/first-shelf.ts';
import { unpacked } from '../../src/worksheet/io/packing.ts';
import { openId, Shelf } from '../../src/worksheet/io/shelf.ts';
import { freshBrowser } from '../worksheet/io/tabs.ts';

const FOLDER = new URL('./fixtures/version-1/', import.meta.url);
const textOf = (name: string) => readFileSync(new URL(name, FOLDER), 'utf8');
const names = readdirSync(FOLDER)
  .filter((name) => !/\.(storage|results)\.json$/.test(name) && name.endsWith('.json'))
  .map((name) => name.replace('.json', ''));

interface Version1 {
  readonly label: string;
  readonly thread: string;
  readonly units: Readonly<Record<string, string>>;
  readonly boxes: Readonly<Record<string, string>>;
  readonly choices: Readonly<Record<string, string>>;
  readonly readings: readonly (readonly string[])[];
  readonly ways: readonly { name: string; torque: string; readings: string[][] }[];
}

/** Everything in a file of version 1, in its own order, without the paths. */
function textsOfVersion1(file: Version1): readonly string[] {
  const ways = file.ways.flatMap(({ name, torque, readings }) => [
    name,
    torque,
    ...readings.flat(),
  ]);
  const texts = [
    file.label,
    file.thread,
    ...Object.values(file.boxes),
    ...Object.values(file.choices),
    ...file.readings.flat(),
    ...ways,
  ];
  return texts.filter((text) => text !== '').sort();
}

function opened(value: unknown, renamed?: Readonly<Record<string, string>>): WorksheetDocument {
  const read = readDocument(value, renamed);
  if (typeof read === 'string') throw new Error(read);
  expect(read.setAside).toEqual([]);
  return read.document;
}

describe('version 1', () => {
  it('is there in many forms', () => expect(names.length).toBeGreaterThan(7));

  it.each(names)('%s opens from a file with every text in its place', (name) => {
    const file: Version1 = JSON.parse(textOf(`${name}.json`));
    const document = opened(file);
    const texts = textsOf(document).flatMap(([, text]) => (text === '' ? [] : [text]));
    expect(texts.sort()).toEqual(textsOfVersion1(file));
    expect(document.units).toEqual(file.units);
    expect(document.typed).toMatchObject(file.boxes);
    const [, ...readings] = document.tables['readings'] ?? [];
    // Version 1 knew no series and no row that is struck out.
    expect(readings.map((row) => [...row])).toEqual(file.readings.map((row) => [...row, '', '']));
    for (const [place, way] of file.ways.entries()) {
      expect(document.tables['ways']?.[place + 1]).toEqual([way.name, way.torque]);
      const [, ...own] = document.tables[`ways.${place}.readings`] ?? [];
      expect(own).toEqual(way.readings);
    }
  });

  it.each(names)('%s opens from its link and from the store as from its file', async (name) => {
    const file = opened(JSON.parse(textOf(`${name}.json`)));
    const link = await unpacked(textOf(`${name}.link.txt`).trim());
    expect(link.kind === 'value' && opened(link.value)).toEqual(file);
    onTestFinished(freshBrowser());
    const stored = Object.entries<string>(JSON.parse(textOf(`${name}.storage.json`)));
    for (const [key, text] of stored) localStorage.setItem(key, text);
    const records = await recordsAtStart(new Shelf());
    const open = records.find(({ id }) => id === openId());
    expect(opened(open?.document)).toEqual(file);
    expect(Object.keys(localStorage).filter((key) => key.startsWith('worksheet.'))).toEqual([]);
  });

  it('opens in other units with the old ones written out', () => {
    const typed = typedOf(opened(JSON.parse(textOf('example-a.json'))), bareUnits('us'));
    expect(typed['band.bodyWidth']).toBe('29 mm');
    expect(typed['readings.0.torque']).toBe('1.5 N·m');
    expect(typed['ways.0.torque']).toBe('12 N·m');
    expect(typed['tensioner.collar.kind']).toBe('collar');
  });
});

describe('a box that is renamed', () => {
  const renamed = {
    'rig.readTo': 'rig.repeatability',
    'readings.*.turns': 'readings.*.wholeTurns',
  };
  const { boxes: _, ...file } = JSON.parse(textOf('example-a.json'));
  const old = { ...file, boxes: { 'rig.readTo': '0.005' }, readings: [['1', '2', '', '1/12']] };

  it('opens yesterday’s file under today’s name, in rows too', () => {
    const { typed, tables } = opened(old, renamed);
    expect(typed['rig.repeatability']).toBe('0.005');
    expect(typed).not.toHaveProperty('rig.readTo');
    expect(tables['readings']?.[1]).toEqual(['1', '2', '1/12', '', '', '']);
  });

  it('to a name that is not on the form is set aside, not lost', () =>
    expect(readDocument(old, { 'rig.readTo': 'rig.gone' })).toMatchObject({
      setAside: [{ place: 'rig.readTo', text: '0.005' }],
    }));
});
