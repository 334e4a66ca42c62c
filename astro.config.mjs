import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';
import { serviceWorker } from './.ci/service-worker.mjs';
import { strictStyles } from './.ci/strict-styles.mjs';
import { woff2Only } from './.ci/woff2-only.mjs';
import { workedOut } from './.ci/worked-out.mjs';

/** What most pages with numbers load anyway is sent as one file each: it packs better, and a slow line asks less often. */
const MECHANICS =
  /\/src\/core\/(assert|section|elasticity|loop|band-stiffness|turns|collar|screw|tensioner|thread-(form|shape))\./;
const codeSplitting = {
  groups: [
    { name: 'units', test: /\/src\/units\// },
    { name: 'mechanics', test: MECHANICS },
  ],
};

/** Modules that only say what things are: where nothing of one is used, it is not sent. */
const treeshake = { moduleSideEffects: (id) => !/src.(core|units|form|models)/.test(id) };

export default defineConfig({
  base: process.env.BASE ?? '/',
  ...(process.env.SITE ? { site: process.env.SITE } : {}),
  outDir: process.env.OUT_DIR ?? './dist',
  trailingSlash: 'always',
  devToolbar: { enabled: false },
  build: { inlineStylesheets: 'never', assets: 'assets' },
  integrations: [mdx(), strictStyles(), serviceWorker()],
  vite: {
    plugins: [woff2Only(), workedOut()],
    build: { assetsInlineLimit: 0, rolldownOptions: { treeshake } },
    environments: {
      client: { build: { rolldownOptions: { output: { codeSplitting } } } },
    },
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  },
});
