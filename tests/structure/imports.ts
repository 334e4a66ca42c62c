/** What one source file imports, read from its text: TypeScript, Astro components and MDX alike. */
import { posix } from 'node:path';

const IMPORTS = [
  /^[ \t]*(?:import|export)\s(?:[^'"`;]*?\sfrom\s+)?['"]([^'"]+)['"]/gm,
  /\bimport\(\s*['"`]([^'"`]+)['"`]/g,
  /\bimport\.meta\.glob(?:<[^>]*>)?\(\s*['"]([^'"]+)['"]/g,
  /\bnew URL\(\s*['"]([^'"]+)['"],\s*import\.meta\.url/g,
];

/** Everything the text imports, as it is written there: packages, addresses of files, glob patterns. */
export const importsOf = (text: string): readonly string[] =>
  IMPORTS.flatMap((pattern) => [...text.matchAll(pattern)].flatMap((match) => match[1] ?? []));

/** Whether an import names a file of ours and not a package. */
export const isRelative = (specifier: string): boolean => /^\.{0,2}\//.test(specifier);

/** The project path that a relative import of the file at `path` leads to. */
export const target = (path: string, specifier: string): string =>
  specifier.startsWith('/')
    ? specifier.slice(1)
    : posix.join(posix.dirname(path), specifier.replace(/[?#].*$/, ''));
