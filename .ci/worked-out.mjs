/**
 * Modules named `*.worked.ts` are worked out once, at build: what they export is plain data, and the data is sent in
 * place of the code that made it, with ten digits to a number. Without the plugin (in tests) they are ordinary modules with the same exports.
 */
import { pathToFileURL } from 'node:url';

const DIGITS = 10; // far more than is shown or tested; the rest is noise that does not compress

/** Refuses what JSON would silently turn into something else, and leaves off the digits that nobody needs. */
export function plain(key, value) {
  const isPlain = value !== undefined && typeof value !== 'function';
  if (!isPlain || (typeof value === 'number' && !Number.isFinite(value))) {
    throw new TypeError(`${key} must be plain finite data (was ${value})`);
  }
  return typeof value === 'number' ? Number(value.toPrecision(DIGITS)) : value;
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
        .map(([name, value]) => `export const ${name} = ${JSON.stringify(value, plain)};`)
        .join('\n');
    },
  };
}
