/**
 * The built site as two editions, an older and a newer one in which every hashed name is another, on a host that can
 * be changed while pages are open: it deploys, hangs, fails, answers with a sign-in page, or misses a file.
 */
import { createServer, type ServerResponse } from 'node:http';
import { extname } from 'node:path';
import { contentsOf, siteFiles, workerText } from '../../.ci/service-worker.mjs';

/** Which edition a host serves, and what it does wrong. */
export interface Host {
  edition: 'older' | 'newer';
  trouble: 'none' | 'fails' | 'hangs' | 'asks to sign in';
  /** An address below the base that is not there. */
  missing: string;
  /** An address below the base from which on it asks to sign in. */
  signsOutWith: string;
  /** What it waits for before it does. */
  signsOutAfter: Promise<unknown>;
}

type Contents = ReadonlyMap<string, Buffer>;

const MARK = 'newer';
const HASHED = /^assets\/.+\.([\w-]{8,}\.\w+)$/;
/** What may be the last of a hashed name, from its point on, wherever it is written. */
const A_NAME = /\.[\w-]{8,}\.(?:js|css|woff2)\b/g;
const TEXT = /\.(html|js|css)$/;
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
};

/** Whether an address is that of a hashed file of the newer edition. */
export const isNewer = (address: string): boolean => address.includes(`.${MARK}-`);
/** Whether an address is that of a hashed file of either. */
export const isOfAnEdition = (address: string): boolean =>
  /\/assets\/[^/]+\.[\w-]{8,}\.\w+$/.test(address);

/**
 * Pages that stand for all: a small site is updated as a large one is, sooner. With the worksheet, which brings more
 * than all others together, for who works in it.
 */
const SIZES = {
  small: /^(index|404|(search|lessons\/stiff-spring|reference\/terms)\/index)\.html$/,
  'with the worksheet':
    /^(index|404|(worksheet|lessons\/stiff-spring|reference\/terms)\/index)\.html$/,
} as const;
type Size = keyof typeof SIZES;
const isBegunWith = (name: string, pages: RegExp) =>
  TEXT.test(name) ? pages.test(name) : !name.includes('/');

/** A part of a site: the files begun with, and whatever assets they name, straight or by another. */
function partOf(site: Contents, pages: RegExp): Contents {
  const part = new Map([...site].filter(([name]) => isBegunWith(name, pages)));
  for (const [name, content] of part) {
    // grows as it is walked
    if (!TEXT.test(name)) continue;
    const text = content.toString();
    for (const [other, found] of site)
      if (other.startsWith('assets/') && text.includes(other.slice('assets/'.length)))
        part.set(other, found);
  }
  return part;
}

/** Every hashed name another, wherever it is written. */
function newerEdition(older: Contents): Contents {
  const names = new Set([...older.keys()].flatMap((name) => HASHED.exec(name)?.[1] ?? []));
  const renamed = (text: string) =>
    text.replace(A_NAME, (name) => (names.has(name.slice(1)) ? `.${MARK}-${name.slice(1)}` : name));
  return new Map(
    [...older].map(([name, content]) => [
      renamed(name),
      TEXT.test(name) ? Buffer.from(renamed(content.toString())) : content,
    ]),
  );
}

async function withWorker(contents: Contents, base: string): Promise<Contents> {
  const site = new Map([...contents].filter(([name]) => name !== 'sw.js'));
  return new Map([...site, ['sw.js', Buffer.from(await workerText(siteFiles(base, site)))]]);
}

/** The name of what a host, or what stands before it, sends in place of a file. */
const NOT_OURS = 'x.html';

function send(response: ServerResponse, status: number, name: string, content: string | Buffer) {
  response.writeHead(status, {
    'Content-Type': TYPES[extname(name)] ?? 'application/octet-stream',
    'Cache-Control': name === NOT_OURS ? 'no-store' : 'max-age=3600',
  });
  response.end(content);
}

/** Both editions of a build, made once. */
const editionsOf = new Map<string, Promise<Readonly<Record<Host['edition'], Contents>>>>();

async function editionsFrom(folder: string, base: string, size: Size) {
  const older = partOf(await contentsOf(folder), SIZES[size]);
  const both = [older, newerEdition(older)].map((each) => withWorker(each, base));
  const [first, second] = await Promise.all(both);
  return { older: first ?? older, newer: second ?? older };
}

function editionsAt(folder: string, base: string, size: Size) {
  const key = `${base} ${size}`;
  const found = editionsOf.get(key) ?? editionsFrom(folder, base, size);
  editionsOf.set(key, found);
  return found;
}

/** A host that misses nothing and stays signed in. */
const STAYS = { missing: '', signsOutWith: '', signsOutAfter: Promise.resolve() };

/** Serves both editions of builds by their base, each base with a host of its own, and with `max-age` on every file. */
export async function serveEditions<Base extends string>(
  builds: Readonly<Record<Base, string>>,
  size: Size = 'small',
) {
  const hosts = {} as Record<Base, Host>;
  const sites = new Map<string, Awaited<ReturnType<typeof editionsAt>>>();
  const bases = Object.keys(builds).sort((a, b) => b.length - a.length) as Base[];
  for (const base of bases) {
    hosts[base] = { edition: 'older', trouble: 'none', ...STAYS };
    sites.set(base, await editionsAt(builds[base], base, size));
  }
  const server = createServer(async (request, response) => {
    const path = decodeURIComponent((request.url ?? '').replace(/[?#].*$/, ''));
    const base = bases.find((each) => path.startsWith(each));
    if (!base) return send(response, 404, '404.html', 'No such file');
    const name = path.slice(base.length).replace(/(^|\/)$/, '$1index.html');
    if (name === hosts[base].signsOutWith) {
      await hosts[base].signsOutAfter;
      hosts[base].trouble = 'asks to sign in';
    }
    const { edition, trouble, missing } = hosts[base];
    if (trouble === 'hangs') return undefined;
    if (trouble === 'fails') return send(response, 503, NOT_OURS, 'Back soon');
    if (trouble === 'asks to sign in') return send(response, 200, NOT_OURS, 'Sign in');
    const content = sites.get(base)?.[edition].get(name);
    if (!content || name === missing) return send(response, 404, '404.html', 'No such file');
    return send(response, 200, name, content);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', () => resolve()));
  const address = server.address();
  const port = typeof address === 'object' && address ? address.port : 0;
  const close = () => {
    server.closeAllConnections();
    server.close();
  };
  return { hosts, origin: `http://127.0.0.1:${port}`, close };
}
