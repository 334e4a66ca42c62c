/** What the core promises: each file has its test, and nothing but its arguments decides what it returns. */
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { exists, filesUnder, textOf } from './project-files.ts';

const core = filesUnder('src/core').filter((path) => path.endsWith('.ts'));
const testOf = (path: string): string =>
  path.replace('src/', 'tests/').replace(/\.ts$/, '.test.ts');

const OUTER_WORLD =
  /\b(Math\.random|Date\b|performance\.|document\.|window\.|globalThis|process\.|console\.|Intl\.|toLocale\w+|crypto\.|fetch\()/;

const withoutComments = (text: string): string =>
  text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/\/\/.*$/gm, '');
/** Whether a file only hands on what its room has. */
const isDoorOnly = (text: string): boolean =>
  withoutComments(text)
    .replaceAll(/export (?:type )?\{[^}]*\} from '[^']*';/g, '')
    .trim() === '';
/** Whether nothing of a file is left to run: it only says what things look like. */
const isTypesOnly = (text: string): boolean =>
  ts
    .transpileModule(text, { compilerOptions: { target: ts.ScriptTarget.ESNext } })
    .outputText.trim() === 'export {};';
const outerWorld = (text: string): string | undefined =>
  withoutComments(text).match(OUTER_WORLD)?.[0];

describe('each file of the core', () => {
  it('has a test of the same name, unless it is a door or types and nothing else', () => {
    expect(core.length).toBeGreaterThan(0);
    const isRun = (text: string) => !isDoorOnly(text) && !isTypesOnly(text);
    expect(core.filter((path) => !exists(testOf(path)) && isRun(textOf(path)))).toEqual([]);
  });

  it('is tested alone: no test is left of a file that went', () => {
    const tests = filesUnder('tests/core').filter((path) => path.endsWith('.test.ts'));
    expect(tests.filter((path) => !core.map(testOf).includes(path))).toEqual([]);
  });

  it('knows no clock, no chance, no place and no page', () =>
    expect(core.filter((path) => outerWorld(textOf(path)) !== undefined)).toEqual([]));

  it('says at its head what it is and where it comes from', () => {
    const headless = core.filter(
      (path) => !/^\/\*\*[\s\S]*?\bSources?:[\s\S]*?\*\//.test(textOf(path)),
    );
    expect(headless).toEqual([]);
  });
});

describe('the search for the outer world', () => {
  it.each(['x = Math.random();', 'const now = Date.now();', 'x.toLocaleString()'])(
    'finds %s',
    (text) => expect(outerWorld(text)).toBeDefined(),
  );

  it('passes over comments', () =>
    expect(outerWorld('/** Date. */ // Math.random')).toBeUndefined());
});
