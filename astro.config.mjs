import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';
import { strictStyles } from './.ci/strict-styles.mjs';

export default defineConfig({
  base: process.env.BASE ?? '/',
  ...(process.env.SITE ? { site: process.env.SITE } : {}),
  outDir: process.env.OUT_DIR ?? './dist',
  trailingSlash: 'always',
  devToolbar: { enabled: false },
  build: { inlineStylesheets: 'never', assets: 'assets' },
  integrations: [mdx(), strictStyles()],
  vite: {
    build: { assetsInlineLimit: 0 },
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  },
});
