/**
 * The little of the content's YAML that references need: the keys of a list of entries, and single fields.
 * Read from the text, so that a reference is checked against what is written and not against what a loader made of it.
 */
import { filesUnder, textOf } from './project-files.ts';

const KEY = /^(?:([\w-]+):|-\s+(?:key|id):\s*['"]?([\w-]+)['"]?)\s*/gm;

/** The keys of a file of entries: a map's own keys, or the `key` or `id` of each entry of a list. */
export const keysOf = (yaml: string): readonly string[] =>
  [...yaml.matchAll(KEY)].flatMap((match) => match[1] ?? match[2] ?? []);

/** The frontmatter of a lesson, without its fences. */
export const frontmatterOf = (mdx: string): string => mdx.match(/^---\n([\s\S]*?)\n---/)?.[1] ?? '';

const unquoted = (text: string): string => text.trim().replace(/^(['"])(.*)\1$/, '$2');

/** The value of a field on its own line, at any depth; every one when the name comes back. */
export const fieldsOf = (yaml: string, name: string): readonly string[] =>
  [...yaml.matchAll(new RegExp(`^[ \\t-]*${name}:[ \\t]+([^\\s#[][^#\\n]*)`, 'gm'))].map((match) =>
    unquoted(match[1] ?? ''),
  );

/** The entries of a field's list, written as `[a, b]` or one to a line below the name. */
export function listOf(yaml: string, name: string): readonly string[] {
  const inRow = [...yaml.matchAll(new RegExp(`^[ \\t-]*${name}:\\s*\\[([^\\]]*)\\]`, 'gm'))];
  const below = [
    ...yaml.matchAll(new RegExp(`^[ \\t]*${name}:[ \\t]*\\n((?:[ \\t]*-[^\\n]*\\n?)+)`, 'gm')),
  ];
  const rows = inRow.flatMap((match) => (match[1] ?? '').split(','));
  const lines = below.flatMap((match) => (match[1] ?? '').replaceAll(/^\s*-/gm, '').split('\n'));
  return [...rows, ...lines].map(unquoted).filter(Boolean);
}

/** The keys that a component is given in a text: `<Term k="gauge length">`. */
export const keysGivenTo = (component: string, text: string): readonly string[] =>
  [...text.matchAll(new RegExp(`<${component}\\b[^>]*?\\bk=["']([^"']*)["']`, 'g'))].map(
    (match) => match[1] ?? '',
  );

/** Path and text of each lesson. */
export const lessons = (): readonly (readonly [string, string])[] =>
  filesUnder('content/lessons')
    .filter((path) => path.endsWith('.mdx'))
    .map((path) => [path, textOf(path)] as const);

/** Path and text of each data file below `content`. */
export const dataFiles = (): readonly (readonly [string, string])[] =>
  filesUnder('content')
    .filter((path) => path.endsWith('.yaml'))
    .map((path) => [path, textOf(path)] as const);
