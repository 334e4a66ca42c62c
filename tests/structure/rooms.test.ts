/** The rooms of the house: none too full, no name that says its folder twice, nothing of one lesson among what is shared. */
import { basename, dirname } from 'node:path';
import { describe, expect, it } from 'vitest';
import { importsOf, isRelative, target } from './imports.ts';
import { filesUnder, textOf } from './project-files.ts';

const FULLEST = 24; // files of a folder
const SHARED = /^src\/(models|figures|charts)\//;

const sources = filesUnder('src');

function tooFull(paths: readonly string[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const path of paths) counts.set(dirname(path), (counts.get(dirname(path)) ?? 0) + 1);
  return [...counts].filter(([, count]) => count > FULLEST).map(([folder]) => folder);
}

const inKebab = (name: string): string =>
  name.replaceAll(/(?<=[a-z0-9])[A-Z]/g, '-$&').toLowerCase();

/** Whether a file's name begins with its folder's: `screw/screw-handbook.ts`, `screw/ScrewParts.tsx`. */
const saysFolderTwice = (path: string): boolean =>
  inKebab(basename(path)).startsWith(`${basename(dirname(path))}-`);

/** Who a file belongs to: its lesson, or the room at the top. */
const ownerOf = (path: string): string =>
  path.match(/^src\/(lessons\/[^/]+)\//)?.[1] ?? path.split('/')[1] ?? '';

type Graph = ReadonlyMap<string, readonly string[]>;

/** The rooms and lessons that reach a shared file, directly or through other shared files. */
function usersOf(path: string, importers: Graph, seen = new Set<string>()): ReadonlySet<string> {
  const users = new Set<string>();
  seen.add(path);
  for (const importer of importers.get(path) ?? []) {
    if (!SHARED.test(importer)) users.add(ownerOf(importer));
    else if (!seen.has(importer))
      for (const user of usersOf(importer, importers, seen)) users.add(user);
  }
  return users;
}

function importersOf(texts: readonly (readonly [string, string])[]): Graph {
  const importers = new Map<string, string[]>();
  for (const [path, text] of texts)
    for (const specifier of importsOf(text).filter(isRelative)) {
      const file = target(path, specifier);
      importers.set(file, [...(importers.get(file) ?? []), path]);
    }
  return importers;
}

/** Shared files that only one lesson uses. */
function privateAmongShared(texts: readonly (readonly [string, string])[]): readonly string[] {
  const importers = importersOf(texts);
  return texts
    .map(([path]) => path)
    .filter((path) => SHARED.test(path))
    .filter((path) => {
      const users = [...usersOf(path, importers)];
      return users.length === 1 && users[0]?.startsWith('lessons/');
    });
}

describe('rooms', () => {
  it(`hold at most ${FULLEST} files each`, () => expect(tooFull(sources)).toEqual([]));

  it('are not named again by their files', () =>
    expect(sources.filter(saysFolderTwice)).toEqual([]));

  it('that are shared hold nothing that one lesson alone uses', () => {
    const code = sources.filter((path) => /\.(ts|tsx|astro)$/.test(path));
    expect(privateAmongShared(code.map((path) => [path, textOf(path)] as const))).toEqual([]);
  });
});

describe('the check of the rooms', () => {
  it('finds a room that is too full', () => {
    const files = Array.from({ length: FULLEST + 1 }, (_, i) => `src/core/a${i}.ts`);
    expect(tooFull(files)).toEqual(['src/core']);
    expect(tooFull(files.slice(1))).toEqual([]);
  });

  it.each(['src/core/screw/screw-handbook.ts', 'src/lessons/a/screw/ScrewParts.tsx'])(
    'finds a folder named twice: %s',
    (path) => expect(saysFolderTwice(path)).toBe(true),
  );

  it.each(['src/core/screw/screwdriver.ts', 'src/core/screw.ts', 'src/units/unit.ts'])(
    'passes over %s',
    (path) => expect(saysFolderTwice(path)).toBe(false),
  );

  it('finds what one lesson alone uses, also through another shared file', () => {
    const only = [
      ['src/figures/Nut.tsx', "import { layout } from './layout.ts';"],
      ['src/figures/layout.ts', ''],
      ['src/lessons/a/turns.figure.tsx', "import { Nut } from '../../figures/Nut.tsx';"],
    ] as const;
    expect(privateAmongShared(only)).toEqual(['src/figures/Nut.tsx', 'src/figures/layout.ts']);
    const shared = ['src/lessons/b/x.figure.tsx', only[2][1]] as const;
    expect(privateAmongShared([...only, shared])).toEqual([]);
  });
});
