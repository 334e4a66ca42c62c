import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';
import { cards } from './.ci/cards.mjs';
import { leanFormulae } from './.ci/lean-formulae.mjs';
import { licenses } from './.ci/licenses.mjs';
import { ownArrays } from './.ci/own-arrays.mjs';
import { plainImports } from './.ci/plain-imports.mjs';
import { serviceWorker, workerModules } from './.ci/service-worker.mjs';
import { strictStyles } from './.ci/strict-styles.mjs';
import { woff2Only } from './.ci/woff2-only.mjs';
import { workedOut } from './.ci/worked-out.mjs';

/**
 * How scripts are cut into files, by room: what every live page needs is one file with the units, what lessons share is
 * another, with the drawing kit; so are the part of the core that most lessons use, and what lies between handle and
 * wheels; the rest of the core goes by who uses it, small pieces put together.
 */
const codeSplitting = {
  groups: [
    {
      name: 'ground',
      test: /src.(live.(announce|unit-system)|models.define-model|units.(?!format-about)[a-z-]+\.ts)|node_modules.preact|preload-helper/,
      minShareCount: 2,
    },
    {
      name: 'page',
      test: /src.(live.(?!clipboard|kept-place|link|saving|sharing|search|elements.(late|guess|check|highlight|share))|figures.(?!stress-plot|mill|dial))|node_modules.d3-array[^?]*$/,
      minShareCount: 2,
    },
    { name: 'reading', test: /src.units.reading/ },
    { name: 'part', test: /src.worksheet.(state.sharing|kit.part)/, minShareCount: 2 }, // each too small alone
    { name: 'copying', test: /src.(live.clipboard|worksheet.kit.CopyButton)/ }, // the one alone is too small a file
    { name: 'stress', test: /src.figures.stress-plot/, minShareCount: 2 },
    {
      name: 'common',
      test: /src.(core.(?!worksheet|plan|span|root|threads|screw.collar)|models.(?!mills))/,
      minShareCount: 18, // each lesson counts twice: its page, and its model alone
    },
    {
      name: 'handle',
      test: /src.core.(turns|loop.(band-stiffness|geometry|energy)|screw.(torque|shape|collar)).ts/,
      minShareCount: 2,
    },
    {
      name: 'mechanics',
      test: /src.(core|models)/,
      minShareCount: 2,
      entriesAware: true,
      entriesAwareMergeThreshold: 400, // bytes before packing
    },
    { name: 'mill', test: /src.figures.mill/, minShareCount: 2, entriesAware: true },
  ],
};

/** A script's own name, without the list of its users that the bundler adds. */
const scriptName = ({ name }) => `assets/${name.match(/[a-z-]+(\.figure)?/i)?.[0]}.[hash].js`;
const output = { codeSplitting, entryFileNames: scriptName, chunkFileNames: scriptName };

/** Modules that only say what things are: where nothing of one is used, it is not sent. */
const treeshake = {
  moduleSideEffects: (id) => !/src.(core|units|form|models)/.test(id),
  manualPureFunctions: ['bisector'],
  propertyReadSideEffects: false,
};

export default defineConfig({
  base: process.env.BASE ?? '/',
  ...(process.env.SITE ? { site: process.env.SITE } : {}),
  outDir: process.env.OUT_DIR ?? './dist',
  trailingSlash: 'always',
  devToolbar: { enabled: false },
  build: { inlineStylesheets: 'never', assets: 'assets' },
  integrations: [
    mdx(),
    leanFormulae(),
    strictStyles(),
    licenses(workerModules),
    cards(),
    serviceWorker(),
  ],
  vite: {
    plugins: [woff2Only(), workedOut(), plainImports(), ownArrays()],
    build: { assetsInlineLimit: 0, rolldownOptions: { treeshake } },
    environments: { client: { build: { rolldownOptions: { output } } } },
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  },
});
