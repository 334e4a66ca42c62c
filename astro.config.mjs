import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';
import { serviceWorker } from './.ci/service-worker.mjs';
import { strictStyles } from './.ci/strict-styles.mjs';
import { woff2Only } from './.ci/woff2-only.mjs';
import { workedOut } from './.ci/worked-out.mjs';

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
    build: { assetsInlineLimit: 0 },
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  },
});
