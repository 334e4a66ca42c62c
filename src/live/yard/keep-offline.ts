/** Keeps the site for days without a signal, once the page has nothing else to do. */

/** Starts it where the browser can; without it the site works as long as there is a network. */
export function keepOffline(): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  const start = () => import('./yard-line.ts').then(({ startYard }) => startYard(document));
  const whenIdle = globalThis.requestIdleCallback ?? setTimeout;
  addEventListener('load', () => whenIdle(() => void start().catch(() => undefined)));
}
