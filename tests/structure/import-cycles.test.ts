/** No file of src needs itself through what it imports. A type costs nothing when the site runs: it may point back. */
import { describe, expect, it } from 'vitest';
import { importsOf, isRelative, target } from './imports.ts';
import { filesUnder, textOf } from './project-files.ts';

type Graph = ReadonlyMap<string, readonly string[]>;

const withoutTypes = (text: string): string => text.replace(/^import type [^;]*;/gm, '');

/** Each file of src with the files of src that it imports. */
function importGraph(): Graph {
  const files = filesUnder('src').filter((path) => /\.(ts|tsx|astro)$/.test(path));
  const importedBy = (path: string): readonly string[] =>
    importsOf(withoutTypes(textOf(path)))
      .filter(isRelative)
      .map((specifier) => target(path, specifier))
      .filter((file) => files.includes(file));
  return new Map(files.map((path) => [path, importedBy(path)]));
}

/** The first way found that comes back to a file it has passed, or nothing. */
function cycleIn(graph: Graph): readonly string[] | undefined {
  const done = new Set<string>();
  const follow = (file: string, way: readonly string[]): readonly string[] | undefined => {
    if (way.includes(file)) return [...way.slice(way.indexOf(file)), file];
    if (done.has(file)) return undefined;
    for (const next of graph.get(file) ?? []) {
      const cycle = follow(next, [...way, file]);
      if (cycle) return cycle;
    }
    done.add(file);
    return undefined;
  };
  for (const file of graph.keys()) {
    const cycle = follow(file, []);
    if (cycle) return cycle;
  }
  return undefined;
}

describe('imports', () => {
  it('make no circle', () => expect(cycleIn(importGraph())).toBeUndefined());

  it('would be caught if they did', () => {
    const circle = new Map([
      ['a', ['b', 'd']],
      ['b', ['c']],
      ['c', ['b']],
      ['d', []],
    ]);
    expect(cycleIn(circle)).toEqual(['b', 'c', 'b']);
  });

  it('may meet again without one', () => {
    const meeting = new Map([
      ['a', ['b', 'c']],
      ['b', ['d']],
      ['c', ['d']],
      ['d', []],
    ]);
    expect(cycleIn(meeting)).toBeUndefined();
  });
});
