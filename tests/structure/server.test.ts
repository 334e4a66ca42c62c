/** The server of the built site: what it gives out, under which name and kind, and what it keeps back. */
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { type IncomingMessage, request } from 'node:http';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CACHING, HEADERS } from '../../.ci/headers.mjs';
import { asBase, serve } from '../../.ci/server.mjs';

interface Answer {
  readonly status: number | undefined;
  readonly type: string | undefined;
  readonly location: string | undefined;
  readonly text: string;
}

const folder = mkdtempSync(join(tmpdir(), 'notebook-'));
let served: Awaited<ReturnType<typeof serve>>;

/** Asks for a path exactly as written: `fetch` would tidy the dots away first. */
const ask = (path: string, method = 'GET'): Promise<Answer> =>
  new Promise((resolve, reject) => {
    const options = { host: '127.0.0.1', port: served.port, path, method };
    request(options, (response) => {
      let text = '';
      response.on('data', (chunk) => {
        text += chunk;
      });
      const { 'content-type': type, location } = response.headers;
      response.on('end', () => resolve({ status: response.statusCode, type, location, text }));
    })
      .on('error', reject)
      .end();
  });

/** Asks through a bare connection, with no client between that would refuse or tidy the address. */
const askRaw = (path: string): Promise<string> =>
  new Promise((resolve, reject) => {
    let text = '';
    const socket = connect(served.port, '127.0.0.1', () =>
      socket.write(`GET ${path} HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n`),
    );
    socket.on('data', (chunk) => {
      text += chunk;
    });
    socket.on('error', reject).on('close', () => resolve(text));
  });

beforeAll(async () => {
  const site = join(folder, 'site');
  mkdirSync(join(site, 'lessons'), { recursive: true });
  writeFileSync(join(folder, 'secret.txt'), 'secret');
  writeFileSync(join(site, 'index.html'), 'home');
  writeFileSync(join(site, 'changed.txt'), 'before');
  writeFileSync(join(site, '404.html'), 'wrong address');
  writeFileSync(join(site, 'lessons', 'index.html'), 'lessons');
  writeFileSync(join(site, 'a b.js'), '1');
  writeFileSync(join(site, '.hidden.txt'), 'secret');
  mkdirSync(join(site, 'assets'));
  writeFileSync(join(site, 'assets', 'page.Dx3_f-9a.js'), '2');
  symlinkSync(join(folder, 'secret.txt'), join(site, 'link.txt'));
  symlinkSync(folder, join(site, 'link'));
  served = await serve({ folder: site, base: '/notebook/' });
});

afterAll(() => {
  served.server.close();
  rmSync(folder, { recursive: true });
});

describe('the server', () => {
  it.each([
    ['/notebook/', 'home', 'text/html; charset=utf-8'],
    ['/notebook/?x=1', 'home', 'text/html; charset=utf-8'],
    ['/notebook/lessons/', 'lessons', 'text/html; charset=utf-8'],
    ['/notebook/a%20b.js', '1', 'text/javascript; charset=utf-8'],
  ])('answers %s with %s', async (path, text, type) =>
    expect(await ask(path)).toMatchObject({ status: 200, text, type }),
  );

  it.each([
    ['/notebook', '/notebook/'],
    ['/notebook/lessons?x=1', '/notebook/lessons/?x=1'],
  ])('leads from %s to %s', async (path, location) =>
    expect(await ask(path)).toMatchObject({ status: 301, location }),
  );

  it.each([
    '/',
    '/notebook/nothing',
    '/notebook/../secret.txt',
    '/notebook/..%2fsecret.txt',
    '/notebook/%2e%2e/secret.txt',
    '/notebook/link.txt',
    '/notebook/link/secret.txt',
    '/notebook/link/',
    '/notebook/.hidden.txt',
    '/notebook/./lessons/',
    '/notebook//lessons/',
    '/notebook/%ff',
    '/notebook/%00',
  ])('gives the page for wrong addresses to %s', async (path) =>
    expect(await ask(path)).toMatchObject({ status: 404, text: 'wrong address' }),
  );

  it.each([
    '/.//evil.example/..%2f',
    '//evil.example/..',
    '//evil.example/notebook/lessons',
    '/notebook//evil.example/..%2flessons',
    '/notebook/..//evil.example',
    '/\\evil.example/notebook',
    'http://evil.example/notebook/lessons',
    '/notebook/\tlessons',
  ])('leads nowhere from %j', async (path) => {
    const answer = await askRaw(path);
    expect(answer).not.toMatch(/^location:/im);
    expect(answer).toMatch(/^HTTP\/1\.1 40[04]/);
  });

  it('listens to this computer alone', () =>
    expect(served.server.address()).toMatchObject({ address: '127.0.0.1' }));

  it('says with every file what the list says', async () => {
    const answer = await askRaw('/notebook/');
    for (const { name, value } of HEADERS) expect(answer).toContain(`${name}: ${value}`);
    expect(answer).toContain(`Cache-Control: ${CACHING.other}`);
    expect(await askRaw('/notebook/assets/page.Dx3_f-9a.js')).toContain(CACHING.hashed);
  });

  it('sends no body to a question about the head', async () =>
    expect(await ask('/notebook/', 'HEAD')).toMatchObject({ status: 200, text: '' }));

  it('sends a file packed as it is now, not as it was packed before', async () => {
    const unpacked = async () => {
      const headers = { 'Accept-Encoding': 'gzip' };
      const address = `http://127.0.0.1:${served.port}/notebook/changed.txt`;
      const response = await new Promise<IncomingMessage>((resolve) => {
        request(address, { headers }, resolve).end();
      });
      return gunzipSync(Buffer.concat(await response.toArray())).toString();
    };
    expect([await unpacked(), await unpacked()]).toEqual(['before', 'before']);
    writeFileSync(join(folder, 'site', 'changed.txt'), 'after');
    expect(await unpacked()).toBe('after');
  });

  it('takes nothing in', async () => expect((await ask('/notebook/', 'POST')).status).toBe(405));
});

describe('a base', () => {
  it.each([
    [undefined, '/'],
    ['/', '/'],
    ['notebook', '/notebook/'],
    ['/a/b/', '/a/b/'],
  ])('written %s is %s', (written, base) => expect(asBase(written)).toBe(base));
});
