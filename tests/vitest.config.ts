/** Every check that needs no built site: core, units, models, figures, published numbers, structure. */
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/site/**', 'tests/bench/**', 'tests/built/**'],
    setupFiles: ['tests/draws.ts'],
    isolate: false, // tests change nothing that lasts: a process of its own for each file takes three times as long
    expect: { requireAssertions: true },
    testTimeout: 30_000, // a law over many drawn cases may share two slow processors with a build
    coverage: {
      include: ['src/core/**'],
      reporter: ['text', 'json-summary'],
      reportsDirectory: '.cache/coverage',
    },
  },
});
