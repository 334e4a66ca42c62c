/** The addresses of all pages of the built site, relative to its base. */
import { readdirSync } from 'node:fs';

/** Worked examples, hand-outs and plans are each of one make: a few, with all that one may have, stand for them here. */
const OF_ONE_MAKE = /^\.\/(worked|teach\/hand-outs|teach\/plans)\/./;
const STAND_FOR_ALL = [
  ...['slack-zero', 'back-past-nought', 'stuck-seal'].map((key) => `./worked/${key}/`),
  ...['where-is-zero', 'screw-takes-its-cut'].map((key) => `./teach/hand-outs/${key}/`),
  './teach/plans/one-workshop/',
  './teach/plans/one-workshop/hand-outs/',
];

const ALL: readonly string[] = readdirSync('dist', {
  recursive: true,
  withFileTypes: true,
})
  .filter((entry) => entry.isFile() && entry.name === 'index.html')
  .map((entry) => `${entry.parentPath.replaceAll('\\', '/')}/`.replace(/^.*?dist\//, './'))
  .sort();

const isAlone = (address: string): boolean => address.startsWith('./embed/');

const isOneOfMany = (address: string): boolean =>
  OF_ONE_MAKE.test(address) && !STAND_FOR_ALL.includes(address);

/** Every page but those of figures alone and the one for wrong addresses, and of what is of one make a few: `./`, `lessons/`, … */
export const PAGES = ALL.filter((address) => !isAlone(address) && !isOneOfMany(address));

/** The pages of one figure each, which hold what a lesson holds too. */
export const FIGURES_ALONE = ALL.filter(isAlone);

/** The pages of the lessons. */
export const LESSONS = PAGES.filter((address) => /^\.\/lessons\/./.test(address));
