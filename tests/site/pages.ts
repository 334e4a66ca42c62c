/** The addresses of all pages of the built site, relative to its base. */
import { readdirSync } from 'node:fs';

/** The worked examples are of one make: a few, with all that an example may have, stand for them here. */
const STANDS_FOR_ALL = /^\.\/worked\/((slack-zero|back-past-nought|stuck-seal)\/)?$/;

const ALL: readonly string[] = readdirSync('dist', {
  recursive: true,
  withFileTypes: true,
})
  .filter((entry) => entry.isFile() && entry.name === 'index.html')
  .map((entry) => `${entry.parentPath.replaceAll('\\', '/')}/`.replace(/^.*?dist\//, './'))
  .sort();

const isAlone = (address: string): boolean => address.startsWith('./embed/');

const isOneOfMany = (address: string): boolean =>
  address.startsWith('./worked/') && !STANDS_FOR_ALL.test(address);

/** Every page but those of figures alone and the one for wrong addresses, and of the worked examples a few: `./`, `lessons/`, … */
export const PAGES = ALL.filter((address) => !isAlone(address) && !isOneOfMany(address));

/** The pages of one figure each, which hold what a lesson holds too. */
export const FIGURES_ALONE = ALL.filter(isAlone);

/** The pages of the lessons. */
export const LESSONS = PAGES.filter((address) => /^\.\/lessons\/./.test(address));
