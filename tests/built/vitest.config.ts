/** Checks over the built site; `npm test` builds it first, once at the root and once for a sub-folder. */
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: ['tests/built/**/*.test.ts'],
    isolate: false, // the pages of both builds are read once, not for each file again
    expect: { requireAssertions: true },
    testTimeout: 30_000,
  },
});
