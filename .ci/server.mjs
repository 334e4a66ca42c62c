/**
 * A small server of our own for the built site: files of one folder under one base path, nothing else.
 * The pages carry their own policy; the server adds only what a page cannot say of itself.
 */
import { readFile, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
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

const isFolder = (path) =>
  stat(path).then(
    (found) => found.isDirectory(),
    () => false,
  );

/** What to answer for one address: a file, a redirect to the address with its slash, or nothing. */
async function answerFor(url, folder, base) {
  const { pathname, search } = new URL(url, 'http://localhost');
  if (`${pathname}/` === base) return { redirect: `${base}${search}` };
  if (!pathname.startsWith(base)) return {};
  const path = normalize(join(folder, decodeURIComponent(pathname.slice(base.length))));
  if (path !== folder && !path.startsWith(folder + sep)) return {};
  if (!(await isFolder(path))) return { file: path };
  if (!pathname.endsWith('/')) return { redirect: `${pathname}/${search}` };
  return { file: join(path, 'index.html') };
}

const packed = promisify(gzip);
const PACKABLE = /^text\/|json|svg|xml/; // pictures and fonts are packed already

/** Sends text packed to whoever takes it so, as hosts of static files do. */
async function send(request, response, status, type, body) {
  const isPacked = PACKABLE.test(type) && /\bgzip\b/.test(request.headers['accept-encoding'] ?? '');
  const sent = isPacked ? await packed(body) : body;
  response.writeHead(status, {
    'Content-Type': type,
    'Content-Length': sent.length,
    ...(isPacked ? { 'Content-Encoding': 'gzip' } : {}),
    Vary: 'Accept-Encoding',
    'Cache-Control': 'no-cache',
    'Content-Security-Policy': "frame-ancestors 'none'",
    'Referrer-Policy': 'no-referrer',
    'X-Content-Type-Options': 'nosniff',
  });
  response.end(request.method === 'HEAD' ? undefined : sent);
}

async function respond(request, response, folder, base) {
  const { file, redirect } = await answerFor(request.url, folder, base).catch(() => ({}));
  if (redirect) {
    response.writeHead(301, { Location: redirect }).end();
    return;
  }
  const body = file && (await readFile(file).catch(() => undefined));
  if (body) {
    await send(request, response, 200, TYPES[extname(file)] ?? 'application/octet-stream', body);
    return;
  }
  const missing = await readFile(join(folder, '404.html')).catch(() => Buffer.from('Not found'));
  await send(request, response, 404, TYPES['.html'], missing);
}

/** Serves `folder` until closed; resolves to the port it got. Port 0 takes any free one. */
export function serve({ folder, base = '/', port = 0, host }) {
  const server = createServer((request, response) => {
    if (request.method === 'GET' || request.method === 'HEAD') {
      return respond(request, response, normalize(folder).replace(/[\\/]$/, ''), asBase(base));
    }
    return response.writeHead(405, { Allow: 'GET, HEAD' }).end();
  });
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => resolve({ server, port: server.address().port }));
  });
}

if (isStarted(import.meta.url)) {
  const [folder, base, port] = process.argv.slice(2);
  await serve({ folder, base, port: Number(port), host: '127.0.0.1' });
}
