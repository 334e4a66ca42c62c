/**
 * The line at the foot of a page about days without a signal: what is kept on this device, what is not, and whether a
 * newer version waits. Nothing is taken from the reader's hand: a page is loaded anew only when asked for.
 */

import type { StoreState } from './site-files.ts';
import { WORDS } from './words.ts';

const PATIENCE = 4000; // ms

/** The browser's offer to put the site on the home screen. */
type InstallOffer = Event & { readonly prompt?: () => void };

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

function asked(
  worker: ServiceWorker,
  question: 'ifFree' | 'fetchRest' | 'giveWay',
): Promise<StoreState> {
  const { port1, port2 } = new MessageChannel();
  return new Promise((resolve) => {
    port1.onmessage = ({ data }: MessageEvent<StoreState>) => resolve(data);
    worker.postMessage(question, [port2]);
  });
}

async function tellStored(page: Document, worker: ServiceWorker): Promise<void> {
  const line = lineOf(page, 'stored');
  const told = ({ missing, bytes }: StoreState, some: string) => {
    if (missing === 0) line.say(WORDS.allStored);
    else line.say(some, WORDS.take(bytes), take);
  };
  const take = async () => {
    line.say(WORDS.taking);
    told(await asked(worker, 'fetchRest'), WORDS.someMissing);
  };
  told(await asked(worker, 'ifFree'), WORDS.mostStored);
}

/** Waits until the version in use has stopped fetching and its pages are quiet, or it would not be left. */
const givesWay = (active: ServiceWorker) =>
  Promise.race([
    asked(active, 'giveWay'),
    new Promise((resolve) => setTimeout(resolve, PATIENCE)), // it has something that does not come
  ]);

/** Offers a version that waits; other tabs go on with theirs. */
function offer(
  page: Document,
  waiting: ServiceWorker,
  { active }: ServiceWorkerRegistration,
): void {
  const line = lineOf(page, 'version');
  const reload = () => page.location.reload();
  line.say(WORDS.newVersion, WORDS.useNow, async () => {
    if (waiting.state !== 'installed') return reload(); // another tab has taken it, or a newer one has come
    navigator.serviceWorker.addEventListener('controllerchange', reload);
    line.say(WORDS.opening);
    if (active) await givesWay(active);
    waiting.postMessage('useNow');
  });
}

/** Follows a version on its way; where it does not arrive whole, the reader is told. */
function follow(page: Document, registration: ServiceWorkerRegistration): void {
  const { installing } = registration;
  installing?.addEventListener('statechange', () => {
    if (installing.state === 'installed' && registration.active)
      offer(page, installing, registration);
    if (installing.state === 'redundant' && !registration.active)
      lineOf(page, 'stored').say(WORDS.notStored);
  });
}

/** Whether nothing of it is kept, or on its way: it failed before anybody looked. */
const hasFailed = ({ installing, waiting, active }: ServiceWorkerRegistration) =>
  !(installing || waiting || active);

/** Where a phone offers to put the site on its home screen, a word about it. */
function offerInstall(page: Document, offered: InstallOffer | undefined): void {
  const line = lineOf(page, 'install');
  const { standalone } = navigator as { standalone?: boolean }; // known to browsers that do not offer by themselves
  if (offered) line.say(WORDS.install, WORDS.putThere, () => offered.prompt?.());
  else if (standalone === false) line.say(WORDS.installByHand);
  addEventListener('appinstalled', () => line.say(''));
}

/** Keeps the line at the foot true. */
export async function startLine(
  page: Document,
  registering: Promise<ServiceWorkerRegistration>,
  offered: InstallOffer | undefined,
): Promise<void> {
  offerInstall(page, offered);
  const registration = await registering.catch(() => undefined);
  if (!registration || hasFailed(registration)) return lineOf(page, 'stored').say(WORDS.notStored);
  if (registration.waiting && registration.active) offer(page, registration.waiting, registration);
  follow(page, registration);
  registration.addEventListener('updatefound', () => follow(page, registration));
  const { active } = await navigator.serviceWorker.ready;
  if (active) await tellStored(page, active);
}
