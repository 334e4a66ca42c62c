/**
 * Modules named `*.worked.ts` are worked out once, at build: what they export is plain data, and the data is sent in
 * place of the code that made it. Without the plugin (in tests) they are ordinary modules with the same exports.
 */
import { pathToFileURL } from 'node:url';

/** Refuses what JSON would silently turn into something else. */
function faithful(key, value) {
  const isPlain = value !== undefined && typeof value !== 'function';
  if (!isPlain || (typeof value === 'number' && !Number.isFinite(value))) {
    throw new TypeError(`${key} must be plain finite data (was ${value})`);
  }
  return value;
}

/** The Vite plugin. */
export function workedOut() {
  return {
    name: 'worked-out',
    enforce: 'pre',
    async load(id) {
      if (!id.endsWith('.worked.ts')) return undefined;
      const exported = Object.entries(await import(pathToFileURL(id).href));
      return exported
        .map(([name, value]) => `export const ${name} = ${JSON.stringify(value, faithful)};`)
        .join('\n');
    },
  };
}
