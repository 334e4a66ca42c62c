/** Size, place and name of the project's files. */
import { describe, expect, it } from 'vitest';
import { filesUnder, textFiles, textOf, topLevel } from './project-files.ts';

const LONGEST = 250; // lines: past that a file has two subjects
const WRITTEN = /\.(ts|tsx|mjs|astro|css|mdx|yaml)$|^\.ci\/run$/;
const AT_THE_TOP = [
  'README.md DEVELOPERS.md LICENSE package.json package-lock.json tsconfig.json astro.config.mjs',
  '.gitignore .npmrc src/ content/ tests/ public/ .ci/',
].flatMap((line) => line.split(' '));

const linesOf = (path: string): number => textOf(path).trimEnd().split('\n').length;

describe('files', () => {
  it(`have at most ${LONGEST} lines`, () => {
    const written = ['src', 'content', 'tests', '.ci'].flatMap(filesUnder);
    const long = written.filter((path) => WRITTEN.test(path) && linesOf(path) > LONGEST);
    expect(long.map((path) => `${path} has ${linesOf(path)} lines`)).toEqual([]);
  });

  it('at the top are only those that a newcomer expects', () =>
    expect(topLevel().filter((name) => !AT_THE_TOP.includes(name))).toEqual([]));

  it('are named in kebab-case, and components in PascalCase', () => {
    const code = filesUnder('src').filter((path) => WRITTEN.test(path));
    const odd = code.filter(
      (path) =>
        !/\/(\[?\.{0,3}[a-z0-9]+([-.][a-z0-9]+)*\]?)(\.\w+)+$|\/[A-Z]\w*\.(tsx|astro)$/.test(path),
    );
    expect(odd).toEqual([]);
  });
});

/** Parts of texts that belong to the machine something was made on. Written apart, so as not to find themselves. */
const MACHINE = new RegExp(
  [
    ['registry', '(npmjs|yarnpkg)'].join('\\.'),
    ['(deb|security)', 'debian', 'org'].join('\\.'),
    ['pypi', 'org'].join('\\.'),
    `(?<![\\w.*/-])/(${['work', 'farm', 'root', 'home', 'Users'].join('|')})/[\\w.]`,
    '\\b[A-Z]:\\\\\\\\?Users',
  ].join('|'),
);

describe('texts', () => {
  const trace = (name: string, text: string): readonly string[] => {
    const found = text.match(MACHINE);
    return found ? [`${name}: ${found[0]}`] : [];
  };

  it('name no package registry and no folder of the machine they were written on', () =>
    expect(textFiles().flatMap((path) => trace(path, textOf(path)))).toEqual([]));

  it.each([
    `"resolved": "https://${['registry', 'npmjs', 'org'].join('.')}/x.tgz"`,
    `cd ${['', 'work', 'main'].join('/')}`,
    `'${['', 'home', 'someone', 'notebook'].join('/')}'`,
  ])('are caught when they do: %s', (text) => expect(trace('x', text)).toHaveLength(1));
});
