/**
 * The steps of `npm test`: what each one runs, and where its runner leaves its report.
 */
import { join } from 'node:path';
import { playwrightCounts, vitestCounts } from './counts.mjs';
import { cache, tool } from './machine.mjs';

export const REPORTS = join(cache, 'reports');
export const COUNTS_FILE = join(cache, 'test-counts.json');
export const SUB_FOLDER = { base: '/notebook/', folder: join(cache, 'sub-folder') };

const reportOf = (name) => join(REPORTS, `${name}.json`);

const vitest = (name, config) => ({
  command: () =>
    tool('vitest', [
      'run',
      `--config=${config}`,
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${reportOf(name)}`,
    ]),
  report: { path: reportOf(name), read: vitestCounts },
});

/** Astro reports some faults of the content, such as a reference to nothing, and still exits with 0. */
const build = (env) => ({
  command: () => tool('astro', ['build']),
  env: { ...env, SITE: '' },
  refused: /\[ERROR\]/,
});

export const STEPS = {
  types: { command: () => tool('astro', ['check']) }, // of pages and of all other code
  'lint and format': {
    command: () =>
      tool('@biomejs/biome', ['ci', '--colors=off', '--config-path=.ci/lint.json', '.'], 'biome'),
  },
  'unit and published checks': vitest('unit', 'tests/vitest.config.ts'),
  build: build({ BASE: '/', OUT_DIR: 'dist' }),
  'build for a sub-folder': build({ BASE: SUB_FOLDER.base, OUT_DIR: SUB_FOLDER.folder }),
  'built pages': vitest('built', 'tests/built/vitest.config.ts'),
  'in a real browser': {
    command: () =>
      tool('@playwright/test', ['test', '--config=tests/playwright.config.ts'], 'playwright'),
    report: { path: reportOf('site'), read: playwrightCounts },
  },
};
