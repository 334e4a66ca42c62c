/**
 * Browser tests of the built site. Addresses in tests are relative (`page.goto('./')`), so that the same
 * words work at the root and in a sub-folder; `sub-folder.test.ts` runs against the second build.
 */
import { createServer } from 'node:net';
import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';
import { findChromium } from '../.ci/browser.mjs';
import { projectNode } from '../.ci/machine.mjs';
import { SUB_FOLDER } from '../.ci/steps.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));

/** A port that nothing else uses now. */
function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer().once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
    });
  });
}

/** Chosen once; the workers, which read this file again, inherit it through the environment. */
async function sharedPort(name: string): Promise<number> {
  process.env[name] ??= String(await freePort());
  return Number(process.env[name]);
}

const sites = [
  { name: 'root', folder: 'dist', base: '/', port: await sharedPort('NOTEBOOK_ROOT_PORT') },
  { name: 'sub-folder', ...SUB_FOLDER, port: await sharedPort('NOTEBOOK_SUB_FOLDER_PORT') },
].map((site) => ({ ...site, address: `http://127.0.0.1:${site.port}${site.base}` }));

const SUB_FOLDER_TESTS = /sub-folder\.test\.ts$/;
const executablePath = await findChromium();

export default defineConfig({
  testDir: './site',
  testMatch: '**/*.test.ts',
  outputDir: '../.cache/site-results',
  fullyParallel: true,
  forbidOnly: Boolean(process.env['CI']),
  workers: 3, // on two processors: for a third of the time a page waits
  retries: 0,
  timeout: 60_000,
  expect: { timeout: 15_000 },
  globalTimeout: 30 * 60_000,
  reporter: [['dot'], ['json', { outputFile: '../.cache/reports/site.json' }]],
  use: {
    locale: 'en-GB',
    reuseContext: true, // emptied between tests; a new one for each would take a third of the time
    serviceWorkers: 'block', // each visit would fetch the whole site; what works offline is tried on its own
    launchOptions: {
      ...(executablePath ? { executablePath } : {}),
      args: [
        '--no-sandbox', // the tests run as root in continuous integration, and only on our own pages
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  projects: sites.map(({ name, address }) => ({
    name,
    ...(name === 'root' ? { testIgnore: SUB_FOLDER_TESTS } : { testMatch: SUB_FOLDER_TESTS }),
    use: { baseURL: address },
  })),
  webServer: sites.map(({ folder, base, port, address }) => ({
    command: `"${projectNode()}" .ci/server.mjs "${folder}" ${base} ${port}`,
    cwd: root,
    url: address,
    reuseExistingServer: false,
    timeout: 10_000,
  })),
});
