/**
 * The line at the foot of a page about days without a signal: what is kept on this device, what is not, and whether a
 * newer version waits. Nothing is taken from the reader's hand: a page is loaded anew only when asked for.
 */

import type { StoreState } from './site-files.ts';
import { MOVING, WORDS } from './words.ts';

/** A line and its button. */
interface Line {
  readonly say: (text: string, label?: string, act?: () => void) => void;
}

function lineOf(page: Document, name: string): Line {
  const line = page.querySelector<HTMLElement>(`[data-yard="${name}"]`);
  const [text, button] = [line?.querySelector('span'), line?.querySelector('button')];
  return {
    say: (said, label = '', act = () => {}) => {
      if (!line || !text || !button) return;
      line.hidden = said === '';
      text.textContent = said;
      button.hidden = label === '';
      button.textContent = label;
      button.onclick = act;
    },
  };
}

function asked(worker: ServiceWorker, question: 'state' | 'fetchRest'): Promise<StoreState> {
  const { port1, port2 } = new MessageChannel();
  return new Promise((resolve) => {
    port1.onmessage = ({ data }: MessageEvent<StoreState>) => resolve(data);
    worker.postMessage(question, [port2]);
  });
}

/** Whether the reader pays for what comes, or waits long for it. */
function isMetered(): boolean {
  const { connection } = navigator as {
    connection?: { saveData?: boolean; effectiveType?: string };
  };
  return connection?.saveData === true || /2g|3g/.test(connection?.effectiveType ?? '');
}

/** Resolves when no finger is on the page. */
function handsOff(page: Document): Promise<void> {
  if (!page.documentElement.matches(MOVING)) return Promise.resolve();
  return new Promise((resolve) =>
    page.addEventListener('pointerup', () => resolve(), { once: true }),
  );
}

async function tellStored(page: Document, worker: ServiceWorker): Promise<void> {
  const line = lineOf(page, 'stored');
  const told = ({ missing, bytes }: StoreState, isTried: boolean) => {
    if (missing === 0) return line.say(WORDS.allStored);
    return line.say(isTried ? WORDS.someMissing : WORDS.mostStored, WORDS.take(bytes), take);
  };
  const take = async () => {
    line.say(WORDS.taking);
    told(await asked(worker, 'fetchRest'), true);
  };
  const now = await asked(worker, 'state');
  if (now.missing === 0 || isMetered()) return told(now, false);
  await handsOff(page);
  told(await asked(worker, 'fetchRest'), true);
}

/** Offers a version that waits; other tabs go on with theirs. */
function offer(page: Document, waiting: ServiceWorker): void {
  lineOf(page, 'version').say(WORDS.newVersion, WORDS.useNow, () => {
    navigator.serviceWorker.addEventListener('controllerchange', () => page.location.reload());
    waiting.postMessage('useNow');
  });
}

/** Follows a version on its way; where it does not arrive whole, the reader is told. */
function follow(page: Document, registration: ServiceWorkerRegistration): void {
  const { installing } = registration;
  installing?.addEventListener('statechange', () => {
    if (installing.state === 'installed' && registration.active) offer(page, installing);
    if (installing.state === 'redundant' && !registration.active)
      lineOf(page, 'stored').say(WORDS.notStored);
  });
}

/** Where a phone offers to put the site on its home screen, a word about it. */
function offerInstall(page: Document): void {
  const { standalone } = navigator as { standalone?: boolean }; // known to browsers that do not offer by themselves
  if (standalone === false) lineOf(page, 'install').say(WORDS.installByHand);
  addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    const { prompt } = event as Event & { readonly prompt: () => void };
    lineOf(page, 'install').say(WORDS.install, WORDS.putThere, () => prompt.call(event));
  });
  addEventListener('appinstalled', () => lineOf(page, 'install').say(''));
}

/** Registers the worker that the build wrote, and keeps the line at the foot true. */
export async function startYard(page: Document): Promise<void> {
  offerInstall(page);
  const container = navigator.serviceWorker;
  const worker = `${page.body.dataset['base'] ?? '/'}sw.js`;
  const registration = await container.register(worker, { updateViaCache: 'none' });
  if (registration.waiting && registration.active) offer(page, registration.waiting);
  follow(page, registration);
  registration.addEventListener('updatefound', () => follow(page, registration));
  const { active } = await container.ready;
  if (active) await tellStored(page, active);
}
