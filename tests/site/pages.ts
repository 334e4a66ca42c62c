/** The addresses of all pages of the built site, relative to its base. */
import { readdirSync } from 'node:fs';

/** The worked examples are of one make: a few, with all that an example may have, stand for them here. */
const STANDS_FOR_ALL = /^\.\/worked\/((slack-zero|back-past-nought|stuck-seal)\/)?$/;

/** Every page but the one for wrong addresses, and of the worked examples a few: `./`, `lessons/`, … */
export const PAGES: readonly string[] = readdirSync('dist', {
  recursive: true,
  withFileTypes: true,
})
  .filter((entry) => entry.isFile() && entry.name === 'index.html')
  .map((entry) => `${entry.parentPath.replaceAll('\\', '/')}/`.replace(/^.*?dist\//, './'))
  .filter((address) => !address.startsWith('./worked/') || STANDS_FOR_ALL.test(address))
  .sort();

/** The pages of the lessons. */
export const LESSONS = PAGES.filter((address) => /^\.\/lessons\/./.test(address));
