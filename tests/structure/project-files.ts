/** The project's own files, as paths from its folder with forward slashes, and their text. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

const FOLDERS = ['src', 'content', 'tests', 'public', '.ci'];
const PICTURES_AND_FONTS = /\.(woff2?|ttf|otf|png|jpe?g|webp|ico|pdf|wav|zip)$/;

/** What lies at the top of the project, but for what version control is told to leave out. */
export function topLevel(): readonly string[] {
  const ignored = textOf('.gitignore').split('\n').filter(Boolean);
  return readdirSync(root, { withFileTypes: true })
    .map((entry) => (entry.isDirectory() ? `${entry.name}/` : entry.name))
    .filter((name) => name !== '.git/' && name !== '.git' && !ignored.includes(name));
}

/** Every file below `folder`, sorted; none when there is no such folder. */
export function filesUnder(folder: string): readonly string[] {
  if (!existsSync(join(root, folder))) return [];
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(root.length).replaceAll('\\', '/'))
    .sort();
}

/** Every text file that belongs to the project, sorted within its folder. */
export function textFiles(): readonly string[] {
  const atTop = topLevel().filter((name) => !name.endsWith('/'));
  return [...atTop, ...FOLDERS.flatMap(filesUnder)].filter(
    (name) => !PICTURES_AND_FONTS.test(name),
  );
}

/** Whether the project has this file or folder. */
export const exists = (path: string): boolean => existsSync(join(root, path));

/** The text of one file of the project. */
export const textOf = (path: string): string => readFileSync(join(root, path), 'utf8');
