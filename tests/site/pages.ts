/** The addresses of all pages of the built site, relative to its base. */
import { readdirSync } from 'node:fs';

const ALL: readonly string[] = readdirSync('dist', {
  recursive: true,
  withFileTypes: true,
})
  .filter((entry) => entry.isFile() && entry.name === 'index.html')
  .map((entry) => `${entry.parentPath.replaceAll('\\', '/')}/`.replace(/^.*?dist\//, './'))
  .sort();

const isAlone = (address: string): boolean => address.startsWith('./embed/');

/** Every page but those of figures alone and the one for wrong addresses: `./`, `lessons/`, … */
export const PAGES = ALL.filter((address) => !isAlone(address));

/** The pages of one figure each, which hold what a lesson holds too. */
export const FIGURES_ALONE = ALL.filter(isAlone);

/** The pages of the lessons. */
export const LESSONS = PAGES.filter((address) => /^\.\/lessons\/./.test(address));
