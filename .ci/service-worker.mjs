/**
 * After the build, writes the service worker: after one visit the whole site opens without a signal.
 * Pages come from the network when there is one, so that a new build is seen; files with a hash in their name come
 * from the store. The store's name is the hash of all files, so an old one is dropped when a new one is complete.
 */
import { createHash } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const LEFT_OUT = /(^|\/)(sw\.js|card\.png|readme\.png|robots\.txt|.*\.map)$/;

/** The worker's text for a base path, a version and the files to keep. */
export function workerText(base, version, files) {
  return `const STORE = 'notebook-${version}';
const BASE = ${JSON.stringify(base)};
const FILES = ${JSON.stringify(files)};

addEventListener('install', (event) => {
  event.waitUntil(
    caches.open(STORE).then((store) => store.addAll(FILES.map((file) => BASE + file))).then(() => skipWaiting()),
  );
});

addEventListener('activate', (event) => {
  const old = (name) => name.startsWith('notebook-') && name !== STORE;
  event.waitUntil(
    caches.keys().then((names) => Promise.all(names.filter(old).map((name) => caches.delete(name)))).then(() => clients.claim()),
  );
});

const stored = (request) => caches.match(request, { ignoreSearch: true, cacheName: STORE });

async function page(request) {
  try {
    return await fetch(request);
  } catch {
    return (await stored(request)) ?? (await stored(BASE + '404.html')) ?? Response.error();
  }
}

addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== location.origin) return;
  const isPage = request.mode === 'navigate';
  event.respondWith(isPage ? page(request) : stored(request).then((found) => found ?? fetch(request)));
});
`;
}

/** Addresses below the base for the files of a build: a folder's index.html is the folder. */
export function addresses(names) {
  return names
    .filter((name) => /\.[a-z0-9]+$/.test(name) && !LEFT_OUT.test(name))
    .map((name) => name.replaceAll('\\', '/').replace(/(^|\/)index\.html$/, '$1'))
    .sort();
}

/** The Astro integration: lists what was built and writes `sw.js` beside it. */
export function serviceWorker() {
  let base = '/';
  return {
    name: 'service-worker',
    hooks: {
      'astro:config:done': ({ config }) => {
        base = config.base.endsWith('/') ? config.base : `${config.base}/`;
      },
      'astro:build:done': async ({ dir }) => {
        const root = fileURLToPath(dir);
        const names = (await readdir(root, { recursive: true })).sort();
        const hash = createHash('sha256');
        for (const name of names.filter((one) => /\.[a-z0-9]+$/.test(one) && !LEFT_OUT.test(one))) {
          hash.update(name).update(await readFile(join(root, name)));
        }
        const version = hash.digest('hex').slice(0, 12);
        await writeFile(join(root, 'sw.js'), workerText(base, version, addresses(names)));
      },
    },
  };
}
