/**
 * After the build, writes the service worker as one file, with the list of everything that was built: what must be
 * on the device before a version counts as kept, and what may come later. The version is the hash of all files.
 */
import { createHash } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { rolldown } from 'rolldown';
import { isHashed } from './headers.mjs';
import { root } from './machine.mjs';

const WORKER = join(root, 'src/live/yard/worker.ts');
/** What no reader of the site itself needs without a signal: what others show of it is among it. */
const LEFT_OUT = /^(embed|cards)\/|(^|\/)(sw\.js|embed\.js|card\.png|robots\.txt|.*\.map)$/;
const LATER = /^(reference|worked|teach)\//;
const ESSENTIAL = /\.(html|js|css)$/;

/** A folder's index.html is the folder. */
const addressOf = (name) => name.replace(/(^|\/)index\.html$/, '$1');

/** Lists built files by name and content: a version, those without which it is not kept, and those that may come later. */
export function siteFiles(base, contents) {
  const hash = createHash('sha256');
  const kept = [...contents]
    .filter(([name]) => /\.[a-z0-9]+$/.test(name) && !LEFT_OUT.test(name))
    .sort(([a], [b]) => (a < b ? -1 : 1));
  const files = kept.map(([name, content]) => {
    hash.update(name).update(content);
    const integrity = `sha256-${createHash('sha256').update(content).digest('base64')}`;
    const file = {
      path: addressOf(name),
      bytes: content.length,
      integrity,
      isHashed: isHashed(name),
    };
    return { file, isEssential: ESSENTIAL.test(name) && !LATER.test(name) };
  });
  const listed = (isEssential) =>
    files.filter((each) => each.isEssential === isEssential).map(({ file }) => file);
  return {
    base,
    version: hash.digest('hex').slice(0, 12),
    essential: listed(true),
    further: listed(false),
  };
}

/** The contents of every file of a folder by its name, with `/` between folders. */
export async function contentsOf(folder) {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const names = entries
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length).replaceAll('\\', '/'))
    .map((name) => name.replace(/^\//, ''));
  return new Map(
    await Promise.all(names.map(async (name) => [name, await readFile(join(folder, name))])),
  );
}

async function bundled(files) {
  const bundle = await rolldown({
    input: WORKER,
    platform: 'browser',
    transform: {
      define: { SITE: JSON.stringify(files), 'process.env.NODE_ENV': '"production"' },
    },
  });
  const { output } = await bundle.generate({ format: 'iife', minify: true });
  await bundle.close();
  return output[0];
}

/** The worker's text for the files of a site. */
export const workerText = async (files) => (await bundled(files)).code;

/** The modules that go into the worker, by their ids. */
export const workerModules = async () => (await bundled(siteFiles('/', new Map()))).moduleIds;

/** Writes the worker of a built site beside it. */
export async function writeWorker(folder, base) {
  await writeFile(
    join(folder, 'sw.js'),
    await workerText(siteFiles(base, await contentsOf(folder))),
  );
}

/** The Astro integration. */
export function serviceWorker() {
  let base = '/';
  return {
    name: 'service-worker',
    hooks: {
      'astro:config:done': ({ config }) => {
        base = config.base.endsWith('/') ? config.base : `${config.base}/`;
      },
      'astro:build:done': ({ dir }) => writeWorker(fileURLToPath(dir), base),
    },
  };
}
