/**
 * A small server of our own for the built site: files of one folder under one base path, nothing else.
 * The pages carry their own policy; the server adds what a page cannot say of itself.
 */
import { readdir, readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, relative, sep } from 'node:path';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import { headersFor } from './headers.mjs';
import { isStarted } from './machine.mjs';

const TYPES = {
  '.css': 'text/css; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.jpg': 'image/jpeg',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.pdf': 'application/pdf',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.wav': 'audio/wav',
  '.webmanifest': 'application/manifest+json',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml',
  '.zip': 'application/zip',
};

/** '/notebook' and 'notebook/' become '/notebook/', nothing becomes '/'. */
export const asBase = (base = '/') => `/${base.replace(/^\/+|\/+$/g, '')}/`.replace('//', '/');

/** The address below the base that a name in the folder has: a folder's index.html is the folder. */
const addressOf = (name) =>
  name
    .split(sep)
    .join('/')
    .replace(/(^|\/)index\.html$/, '$1');

const isHidden = (name) => name.split(sep).some((part) => part.startsWith('.'));

/** Every file of the folder by its address. What is not in this list is not there: links are not followed. */
async function filesIn(folder) {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const names = entries
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)))
    .filter((name) => !isHidden(name));
  return new Map(names.map((name) => [addressOf(name), join(folder, name)]));
}

function decoded(path) {
  try {
    return decodeURIComponent(path);
  } catch {
    return undefined;
  }
}

/** What to answer for one address: a file, a redirect to an address of our own with its slash, or nothing. */
function answerFor(url, files, base) {
  const [, path = '', search = ''] = /^([^?#]*)(\?[^#]*)?/.exec(url) ?? [];
  if (`${path}/` === base) return { redirect: base + search };
  const address = path.startsWith(base) ? decoded(path.slice(base.length)) : undefined;
  if (address === undefined) return {};
  const folder = `${address}/`;
  if (files.has(address)) return { address };
  return files.has(folder) ? { redirect: base + encodeURI(folder) + search } : {};
}

const pack = promisify(gzip);
/** What was packed last for each address: a page's parts are asked for again with every visit. */
const held = new Map();

/** A file packed, as it is now: anew only when it is another than was packed before. */
function packed(address, body) {
  const last = held.get(address);
  if (last?.body.equals(body)) return last.sent;
  const sent = pack(body);
  held.set(address, { body, sent });
  return sent;
}

const PACKABLE = /^text\/|json|svg|xml/; // pictures and fonts are packed already

/** Sends text packed to whoever takes it so, as hosts of static files do. */
async function send(request, response, status, { address, body }) {
  const type = TYPES[extname(address)] ?? TYPES['.html'];
  const isPacked = PACKABLE.test(type) && /\bgzip\b/.test(request.headers['accept-encoding'] ?? '');
  const sent = isPacked ? await packed(address, body) : body;
  response.writeHead(status, {
    'Content-Type': type,
    'Content-Length': sent.length,
    ...(isPacked ? { 'Content-Encoding': 'gzip' } : {}),
    Vary: 'Accept-Encoding',
    ...headersFor(address),
  });
  response.end(request.method === 'HEAD' ? undefined : sent);
}

async function respond(request, response, files, base) {
  const { address, redirect } = answerFor(request.url, files, base);
  if (redirect) {
    response.writeHead(301, { Location: redirect }).end();
    return;
  }
  const body = address !== undefined && (await readFile(files.get(address)).catch(() => undefined));
  if (body) {
    await send(request, response, 200, { address, body });
    return;
  }
  const missing = await readFile(files.get('404.html') ?? '').catch(() => Buffer.from('Not found'));
  await send(request, response, 404, { address: '404.html', body: missing });
}

/**
 * Serves the files that `folder` holds now until closed; resolves to the port it got. Port 0 takes any free one.
 * Only this computer is answered, unless `host` says otherwise.
 */
export async function serve({ folder, base = '/', port = 0, host = '127.0.0.1' }) {
  const files = await filesIn(folder);
  const server = createServer((request, response) => {
    if (request.method === 'GET' || request.method === 'HEAD')
      return respond(request, response, files, asBase(base));
    return response.writeHead(405, { Allow: 'GET, HEAD' }).end();
  });
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => resolve({ server, port: server.address().port }));
  });
}

if (isStarted(import.meta.url)) {
  const [folder, base, port] = process.argv.slice(2);
  await serve({ folder, base, port: Number(port) });
}
