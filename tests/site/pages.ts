/** The addresses of all pages of the built site, relative to its base. */
import { readdirSync } from 'node:fs';

/** Every page but the one for wrong addresses: `./`, `lessons/`, … */
export const PAGES: readonly string[] = readdirSync('dist', {
  recursive: true,
  withFileTypes: true,
})
  .filter((entry) => entry.isFile() && entry.name === 'index.html')
  .map((entry) => `${entry.parentPath.replaceAll('\\', '/')}/`.replace(/^.*?dist\//, './'))
  .sort();

/** The pages of the lessons. */
export const LESSONS = PAGES.filter((address) => /^\.\/lessons\/./.test(address));
