/** Every reference in the content leads somewhere. A dead one does not stop the build, so it is looked for here. */
import { describe, expect, it } from 'vitest';
import {
  dataFiles,
  fieldsOf,
  frontmatterOf,
  keysGivenTo,
  keysOf,
  lessons,
  listOf,
} from './content-files.ts';
import { exists, filesUnder, textOf } from './project-files.ts';

type Texts = readonly (readonly [string, string])[];

const LISTS = { terms: 'content/terms.yaml', sources: 'content/sources.yaml' };
const COMPONENTS = { terms: 'Term', sources: 'Source' };

const keysIn = (path: string): readonly string[] => (exists(path) ? keysOf(textOf(path)) : []);
const repeated = (texts: readonly string[]): readonly string[] =>
  texts.filter((text, index) => texts.indexOf(text) !== index);

const pages = (): Texts =>
  filesUnder('src')
    .filter((path) => path.endsWith('.astro'))
    .map((path) => [path, textOf(path)] as const);

/** References of one kind that `keys` does not hold, with the file that makes them. */
const dead = (texts: Texts, named: (text: string) => readonly string[], keys: readonly string[]) =>
  texts.flatMap(([path, text]) =>
    named(text)
      .filter((key) => !keys.includes(key))
      .map((key) => `${path}: ${key}`),
  );

describe.each(['terms', 'sources'] as const)('%s', (kind) => {
  const keys = keysIn(LISTS[kind]);

  it('are listed once each', () => {
    expect(keys.length).toBeGreaterThan(0);
    expect(repeated(keys)).toEqual([]);
  });

  it('that a lesson or a data file names are listed', () => {
    expect(dead([...heads(), ...dataFiles()], (text) => listOf(text, kind), keys)).toEqual([]);
  });

  it('that stand in the words are listed', () =>
    expect(
      dead([...lessons(), ...pages()], (text) => keysGivenTo(COMPONENTS[kind], text), keys),
    ).toEqual([]));
});

const heads = (): Texts => lessons().map(([path, text]) => [path, frontmatterOf(text)] as const);

describe('lessons', () => {
  const slugs = lessons().map(([path]) => path.replace(/^.*\/|\.mdx$/g, ''));
  const orders = heads().flatMap(([, head]) => fieldsOf(head, 'order'));

  it('are there', () => expect(slugs.length).toBeGreaterThan(0));

  it.each(['title', 'question', 'summary', 'order'])('name their %s, once each', (name) =>
    expect(
      heads()
        .filter(([, head]) => fieldsOf(head, name).length !== 1)
        .map(([path]) => path),
    ).toEqual([]),
  );

  it('are numbered without a gap', () =>
    expect(orders.map(Number).toSorted((a, b) => a - b)).toEqual(
      slugs.map((_, place) => place + 1),
    ));

  it('have an address in plain letters', () =>
    expect(slugs.filter((slug) => !/^[a-z]+(-[a-z]+)*$/.test(slug))).toEqual([]));

  it('with questions have a file of them, and each such file has its lesson', () => {
    const files = filesUnder('content/problems').map((path) => path.replace(/^.*\/|\.yaml$/g, ''));
    const asking = slugs.filter((_, index) => /<Checks\b/.test(lessons()[index]?.[1] ?? ''));
    expect(asking.filter((slug) => !files.includes(slug))).toEqual([]);
    expect(files.filter((file) => !asking.includes(file))).toEqual([]);
  });

  it('have a folder with a model each, and each such folder has its lesson', () => {
    const folders = filesUnder('src/lessons')
      .filter((path) => path.endsWith('/model.ts'))
      .map((path) => path.replace(/^src\/lessons\/|\/model\.ts$/g, ''));
    expect(folders.toSorted()).toEqual(slugs.toSorted());
  });

  it('that a data file names exist', () =>
    expect(dead(dataFiles(), (text) => fieldsOf(text, 'lesson'), slugs)).toEqual([]));
});

describe('the reading of references', () => {
  const yaml =
    'gauge-length:\n  name: gauge length\n  sources: [a, "b"]\nstrain:\n  sources:\n    - c\n    - d\n';

  it('finds the keys of a map and of a list', () => {
    expect(keysOf(yaml)).toEqual(['gauge-length', 'strain']);
    expect(keysOf('- key: one\n  name: x\n- id: "two"\n')).toEqual(['one', 'two']);
  });

  it('finds lists in a row and lists below each other', () =>
    expect(listOf(yaml, 'sources')).toEqual(['a', 'b', 'c', 'd']));

  it('finds fields and components', () => {
    expect(fieldsOf("order: 3\nmodel: 'stiff-spring' # its name\n", 'model')).toEqual([
      'stiff-spring',
    ]);
    expect(
      keysGivenTo('Term', 'a <Term k="strain">strain</Term>, <Term show k=\'toe\' />'),
    ).toEqual(['strain', 'toe']);
  });

  it('reports a dead reference', () =>
    expect(dead([['x.mdx', 'sources: [a, z]']], (text) => listOf(text, 'sources'), ['a'])).toEqual([
      'x.mdx: z',
    ]));
});
