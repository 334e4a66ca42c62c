/** Keeps the whole site for days without a signal: registers the service worker that the build wrote. */

/** Starts the worker where there is one; without it the site works as long as there is a network. */
export function keepOffline(): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  const base = document.body.dataset['base'] ?? '/';
  addEventListener('load', () => {
    navigator.serviceWorker.register(`${base}sw.js`).catch(() => undefined);
  });
}
