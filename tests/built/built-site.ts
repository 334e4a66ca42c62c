/** The two builds that `npm test` makes, their pages, and the way an address leads to a file. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { SUB_FOLDER } from '../../.ci/steps.mjs';
import { type Page, readPage } from './html.ts';

export interface BuiltSite {
  readonly base: string;
  readonly folder: string;
  readonly files: ReadonlySet<string>;
  readonly pages: ReadonlyMap<string, Page>;
}

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The name under which the built site is thought to stand; no address of it is ever asked. */
export const ORIGIN = 'http://notebook.test';

function builtSite(base: string, at: string): BuiltSite {
  const folder = resolve(root, at);
  if (!existsSync(folder)) throw new Error(`${at} is not built: npm test builds it`);
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(folder.length + 1)
        .replaceAll('\\', '/'),
    )
    .sort();
  const pages = files
    .filter((file) => file.endsWith('.html'))
    .map((file) => [file, readPage(readFileSync(join(folder, file), 'utf8'))] as const);
  return { base, folder, files: new Set(files), pages: new Map(pages) };
}

/** The site at the root of a host, and the same site in a sub-folder. */
export const SITES = [builtSite('/', 'dist'), builtSite(SUB_FOLDER.base, SUB_FOLDER.folder)];

/** The text of one built file. */
export const builtText = (site: BuiltSite, file: string): string =>
  readFileSync(join(site.folder, file), 'utf8');

/** The address under which a built file is served. */
export const addressOf = (site: BuiltSite, file: string): string =>
  `${ORIGIN}${site.base}${file.replace(/(^|\/)index\.html$/, '$1')}`;

/** The built file that a link of the page or stylesheet `from` leads to; undefined when it leads out of the site. */
export function linkedFile(site: BuiltSite, from: string, link: string): string | undefined {
  const { origin, pathname } = new URL(link, addressOf(site, from));
  if (origin !== ORIGIN || !pathname.startsWith(site.base)) return undefined;
  const path = decodeURIComponent(pathname.slice(site.base.length));
  return path === '' || path.endsWith('/') ? `${path}index.html` : path;
}
