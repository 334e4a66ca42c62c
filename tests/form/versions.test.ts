/** Files, links and stores that the site wrote as version 1 or 2 open for ever, to the same text and the same results. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it, onTestFinished } from 'vitest';
import { evaluateWorksheet, trialsOfPrediction } from '../../src/core/worksheet.ts';
import {
  DOCUMENT_FORMAT,
  textsOf,
  typedOf,
  type WorksheetDocument,
} from '../../src/form/document.ts';
import { sheetReader } from '../../src/form/reading.ts';
import { readDocument } from '../../src/form/schema.ts';
import { bareUnits } from '../../src/form/units.ts';
import { PRESET_IN_VERSION_2 } from '../../src/form/versions/version-2.ts';
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

const OTHER = 'otherBand.';

/** Everything in a file of version 1, in its own order, without the paths; that there is another band, a list says by its row. */
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
    ...Object.entries(file.choices).flatMap(([name, text]) => (name === 'otherBand' ? [] : [text])),
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
    const wasPreset = (path: string, text: string) => PRESET_IN_VERSION_2[path] === text;
    const texts = textsOf(document).flatMap(([path, text]) =>
      text === '' || wasPreset(path, text) ? [] : [text === 'washer' ? 'collar' : text],
    );
    expect(texts.sort()).toEqual(textsOfVersion1(file));
    expect(document.units).toEqual(file.units);
    const { 'tensioner.collar.friction': friction, ...plain } = file.boxes;
    const boxes = Object.entries(plain);
    const others = boxes.filter(([box]) => box.startsWith(OTHER));
    expect(document.typed).toMatchObject(
      Object.fromEntries(boxes.filter(([box]) => !box.startsWith(OTHER))),
    );
    expect(document.typed['tensioner.collar.frictionLow']).toBe(friction);
    const [columns = [], first = []] = document.tables['bands'] ?? [];
    for (const [box, text] of others)
      expect(first[columns.indexOf(box.slice(OTHER.length))]).toBe(text);
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
    expect(typed['tensioner.collar.kind']).toBe('washer');
  });
});

/** Numbers of results that are there, by the names they are kept under. */
type Kept = Readonly<Record<string, Readonly<Record<string, number>>>>;

const resultsOf = (document: WorksheetDocument): object => {
  const { worksheet } = sheetReader()(typedOf(document, bareUnits('metric')), 'metric');
  return { ...evaluateWorksheet(worksheet), trials: trialsOfPrediction(worksheet) };
};

describe('what an older file gave', () => {
  const before: Readonly<Record<string, Kept>> = JSON.parse(
    textOf('../results-before-version-3.json'),
  );
  const older = ['version-1', 'version-2'].flatMap((folder) =>
    readdirSync(new URL(`../${folder}/`, FOLDER))
      .filter((name) => name.endsWith('.json') && !name.includes('.storage'))
      .map((name) => [folder, name.replace('.json', '')] as const),
  );

  it('is kept for every one of them', () => {
    expect(older.length).toBeGreaterThan(12);
    for (const [, name] of older) expect(before).toHaveProperty([name]);
  });

  it.each(older)('it gives to the last digit: %s, %s', (folder, name) => {
    const document = opened(JSON.parse(textOf(`../${folder}/${name}.json`)));
    const results = resultsOf(document) as Kept;
    expect(document.version).toBe(3);
    for (const [result, numbers] of Object.entries(before[name] ?? {}))
      for (const [number, was] of Object.entries(numbers))
        expect((results[result]?.[number] ?? Number.NaN) / (was || 1)).toBeCloseTo(was ? 1 : 0, 12);
  });

  it('what it had preset stands where nothing was chosen, also beside what cannot be read', () => {
    const file = { format: DOCUMENT_FORMAT, version: 2, units: {}, tables: {} };
    const read = readDocument({
      ...file,
      typed: { label: 'M', 'tensioner.collar.kind': 'cheese' },
    });
    if (typeof read === 'string') throw new Error(read);
    expect(read.document.typed).toEqual({ ...PRESET_IN_VERSION_2, label: 'M' });
    expect(read.setAside).toEqual([{ place: 'tensioner.collar.kind', text: 'cheese' }]);
  });
});

describe('version 2', () => {
  const other = { 'otherBand.bodyWidth': '26.5', 'otherBand.targetStress': '105' };
  const units = bareUnits('metric');
  const file = { format: 'tension-notebook worksheet', version: 2, units };
  const read = (kind: object) =>
    readDocument({ ...file, typed: { label: 'A', ...other, ...kind } });

  it('has its other band as the first of the list', () =>
    expect(read({ 'otherBand.kind': 'some' })).toEqual({
      document: {
        ...file,
        version: 3,
        typed: { label: 'A', ...PRESET_IN_VERSION_2 },
        tables: {
          bands: [
            ['name', 'bodyWidth', 'thickness', 'targetStress'],
            ['', '26.5', '', '105'],
          ],
        },
      },
      setAside: [],
    }));

  it('keeps beside the sheet what a hidden other band had, where it says nothing', () =>
    expect(read({})).toMatchObject({
      document: { typed: { label: 'A', ...PRESET_IN_VERSION_2 }, tables: {} },
      setAside: Object.entries(other).map(([place, text]) => ({ place, text })),
    }));
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
