/** What the two guides for people promise is there: scripts, files, headings. */
import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CACHING, HEADERS } from '../../.ci/headers.mjs';
import { exists, textOf } from './project-files.ts';

const GUIDES = ['README.md', 'DEVELOPERS.md'];
const scripts = Object.keys(JSON.parse(textOf('package.json')).scripts);

const scriptsNamed = (text: string): readonly string[] =>
  [...text.matchAll(/\bnpm (?:run(?:-script)? ([\w:-]+)|(start|test)\b)/g)].flatMap(
    (match) => match[1] ?? match[2] ?? [],
  );

const linksOf = (text: string): readonly string[] =>
  [...text.matchAll(/\]\(\s*<?([^)>\s]+)/g)]
    .flatMap((match) => match[1] ?? [])
    .filter((link) => !/^(https?:|mailto:)/.test(link));

/** A heading's anchor the way code hosts make it. */
const anchorOf = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s-]/gu, '')
    .trim()
    .replace(/\s/g, '-');

const anchorsOf = (text: string): readonly string[] =>
  [...text.matchAll(/^#+ (.+)$/gm)].map((match) => anchorOf(match[1] ?? ''));

function isReached(link: string, guide: string): boolean {
  const [path = '', anchor] = link.split('#');
  const file = path === '' ? guide : posix.normalize(path);
  if (!exists(file)) return false;
  return anchor === undefined || anchorsOf(textOf(file)).includes(anchor);
}

describe.each(GUIDES)('%s', (guide) => {
  it('names only scripts that exist, and at least one', () => {
    const named = scriptsNamed(textOf(guide));
    expect(named.length).toBeGreaterThan(0);
    expect(named.filter((name) => !scripts.includes(name))).toEqual([]);
  });

  it('links only to files and headings that exist', () =>
    expect(linksOf(textOf(guide)).filter((link) => !isReached(link, guide))).toEqual([]));
});

describe('the headers that README asks of a host', () => {
  it.each([
    ...HEADERS.map(({ name, value }) => [name, value]),
    ['Cache-Control', CACHING.hashed],
    ['Cache-Control', CACHING.other],
  ])('say %s: %s, as our own server does', (name, value) =>
    expect(textOf('README.md')).toMatch(
      new RegExp(`\\| \`${name}\` +\\| \`${RegExp.escape(`${value}`)}\``),
    ),
  );
});

describe('package.json', () => {
  it('names only files that exist in its scripts', () => {
    const commands: readonly string[] = Object.values(JSON.parse(textOf('package.json')).scripts);
    const files = commands.flatMap(
      (command) => command.match(/(?:tests|\.ci|src)\/[\w./-]+/g) ?? [],
    );
    expect(files.filter((path) => !exists(path))).toEqual([]);
  });
});
