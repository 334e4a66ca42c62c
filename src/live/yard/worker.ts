/// <reference lib="webworker" />
/**
 * The service worker: keeps one whole version of the site on the device and answers from it, page and parts alike.
 * A newer version waits until no tab uses this one, or until the reader takes it; what older tabs may still ask for
 * stays until they are closed. The build puts the list of files in and writes the worker as one file.
 */
import { PrecacheController } from 'workbox-precaching/PrecacheController.js';
import type { KeptFile, SiteFiles, StoreState } from './site-files.ts';

declare const SITE: SiteFiles; // put in by the build

const scope = self as unknown as ServiceWorkerGlobalScope;
const { base, version, essential, further } = SITE;
const OURS = `notebook ${base} `;
const STORE = OURS + version;
const FIRST_KIND = /^notebook-[0-9a-f]{12}$/;
const INHERITED = `${base}inherited`; // an address of the store alone
const PATIENCE = 3000; // ms
const REST = 1500; // ms since the reader last touched a page
const QUIET = 400; // ms since a page was last answered

/** A file whose name has a hash is asked for as ever, every other past what the browser remembers; both are checked. */
const entryOf = ({ path, integrity, isHashed }: KeptFile) => ({
  url: base + path,
  integrity,
  revision: isHashed ? null : version,
});

let touchedAt = -REST; // ms
const leaving = new AbortController(); // a newer version cannot take over while anything is being fetched here

/** Waits while a reader is at work: what is to be kept does not take the processor from under a finger. */
async function readerRests(): Promise<void> {
  for (;;) {
    const left = touchedAt + REST - performance.now();
    if (left <= 0 || leaving.signal.aborted) return;
    await new Promise((resolve) => setTimeout(resolve, left));
  }
}

let unanswered = 0; // requests
let answeredAt = 0; // ms

function counted(answering: Promise<Response>): Promise<Response> {
  unanswered += 1;
  return answering.finally(() => {
    unanswered -= 1;
    answeredAt = performance.now();
  });
}

/**
 * Waits until no page has asked for anything for a moment. A request that comes while the browser stops this version
 * starts it again, and it is not stopped a second time: the newer one would wait until it is idle for half a minute.
 */
async function pagesRest(): Promise<void> {
  answeredAt = performance.now(); // the press that asks for it may bring further requests
  for (;;) {
    const left = answeredAt + QUIET - performance.now();
    if (unanswered === 0 && left <= 0) return;
    await new Promise((resolve) => setTimeout(resolve, Math.max(left, QUIET / 4)));
  }
}

const files = new PrecacheController({
  cacheName: STORE,
  fallbackToNetwork: false,
  plugins: [
    {
      requestWillFetch: async ({ request }) => {
        await readerRests();
        return request;
      },
    },
  ],
});
files.addToCacheList(essential.map(entryOf));

async function storedAt(path: string): Promise<Response | undefined> {
  return (await caches.open(STORE)).match(path, { ignoreSearch: true });
}

/** The other stores of this copy of the site; those of another copy on the same host are left alone. */
async function otherStores(): Promise<readonly string[]> {
  const names = (await caches.keys()).filter((name) => name !== STORE);
  const ours = names.filter((name) => name.startsWith(OURS));
  for (const name of names.filter((each) => FIRST_KIND.test(each)))
    if (await (await caches.open(name)).match(base)) ours.push(name);
  return ours;
}

async function inOtherStore(path: string): Promise<Response | undefined> {
  for (const name of await otherStores()) {
    const found = await (await caches.open(name)).match(path, { ignoreSearch: true });
    if (found) return found;
  }
  return undefined;
}

/** What was there when this version took over: stores, and the tabs that may still ask for something in them. */
interface Inherited {
  readonly stores: readonly string[];
  readonly tabs: readonly string[];
}

async function noteInherited(): Promise<void> {
  const tabs = await scope.clients.matchAll({ type: 'window', includeUncontrolled: true });
  const inherited: Inherited = { stores: await otherStores(), tabs: tabs.map(({ id }) => id) };
  await (await caches.open(STORE)).put(INHERITED, new Response(JSON.stringify(inherited)));
}

/** Drops the inherited stores once none of those tabs is open. A newer one, which waits, is not among them. */
async function dropInherited(): Promise<void> {
  const inherited = await storedAt(INHERITED);
  if (!inherited) return;
  const { stores, tabs }: Inherited = await inherited.json();
  const open = await Promise.all(tabs.map((id) => scope.clients.get(id)));
  if (open.some((tab) => tab !== undefined)) return;
  for (const name of stores) await caches.delete(name);
  await (await caches.open(STORE)).delete(INHERITED);
}

async function answer(request: Request, { pathname, search }: URL): Promise<Response> {
  const isPage = request.mode === 'navigate';
  const stored = await storedAt(pathname);
  if (stored) return stored;
  if (isPage && (await storedAt(`${pathname}/`))) return Response.redirect(`${pathname}/${search}`);
  if (!isPage) return (await inOtherStore(pathname)) ?? fetch(request);
  return fetch(request, { signal: AbortSignal.timeout(PATIENCE) }).catch(
    async () => (await storedAt(`${base}404.html`)) ?? Response.error(),
  );
}

/** Whether the reader pays for what comes, or waits long for it. */
function isMetered(): boolean {
  const { connection } = navigator as {
    connection?: { saveData?: boolean; effectiveType?: string };
  };
  return connection?.saveData === true || /2g|3g/.test(connection?.effectiveType ?? '');
}

async function missing(): Promise<readonly KeptFile[]> {
  const found = await Promise.all(further.map(({ path }) => storedAt(base + path)));
  return further.filter((_, place) => !found[place]);
}

async function state(): Promise<StoreState> {
  const left = await missing();
  return { missing: left.length, bytes: left.reduce((sum, { bytes }) => sum + bytes, 0) };
}

const isFont = ({ path }: KeptFile) => path.endsWith('.woff2');

/** Fetches what is still missing, one file after the other; one that fails is tried again another time. */
async function fetchRest(isWanted: (file: KeptFile) => boolean = () => true): Promise<void> {
  const store = await caches.open(STORE);
  for (const { path, integrity, isHashed } of (await missing()).filter(isWanted)) {
    await readerRests();
    if (leaving.signal.aborted) return;
    const { signal } = leaving;
    await fetch(base + path, { integrity, signal, cache: isHashed ? 'default' : 'reload' })
      .then((response) => (response.ok ? store.put(base + path, response) : undefined))
      .catch(() => undefined);
  }
}

scope.addEventListener('install', (event) => {
  files.install(event);
  event.waitUntil(fetchRest(isFont)); // without them pages read well enough
});

scope.addEventListener('activate', (event) => {
  event.waitUntil(
    noteInherited()
      .then(dropInherited)
      .then(() => scope.clients.claim()),
  );
});

scope.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== location.origin) return;
  if (!url.pathname.startsWith(base)) return;
  event.respondWith(counted(answer(request, url)));
  if (request.mode === 'navigate') event.waitUntil(dropInherited());
});

let fetching: Promise<void> | undefined;

function fetchRestOnce(): Promise<void> {
  fetching ??= fetchRest().finally(() => {
    fetching = undefined;
  });
  return fetching;
}

scope.addEventListener('message', (event) => {
  const [port] = event.ports;
  if (event.data === 'touched') {
    touchedAt = performance.now();
    return;
  }
  const isLeaving = event.data === 'giveWay';
  if (isLeaving) leaving.abort();
  const isAsked = event.data === 'fetchRest' || (event.data === 'ifFree' && !isMetered());
  if (event.data === 'useNow') event.waitUntil(scope.skipWaiting());
  const done = isAsked ? fetchRestOnce() : isLeaving ? pagesRest() : Promise.resolve();
  event.waitUntil(done.then(state).then((now) => port?.postMessage(now)));
});
