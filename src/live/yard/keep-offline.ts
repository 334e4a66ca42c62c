/** Keeps the site for days without a signal, once the page has nothing else to do; the line about it comes when it is seen. */

function whenSeen(element: Element, act: () => void): void {
  const observer = new IntersectionObserver((entries) => {
    if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
    observer.disconnect();
    act();
  });
  observer.observe(element);
}

/** Starts it where the browser can; without it the site works as long as there is a network. */
export function keepOffline(page: Document): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  let offered: Event | undefined; // to put the site on the home screen: it may come early, and comes once
  addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    offered = event;
  });
  const start = async () => {
    const { serviceWorker } = navigator;
    const address = `${page.body.dataset['base']}sw.js`;
    const registering = serviceWorker.register(address, { updateViaCache: 'none' });
    const show = () =>
      import('./foot-line.ts').then(({ startLine }) => startLine(page, registering, offered));
    whenSeen(page.querySelector('.site-foot') ?? page.body, () => void show().catch(() => {}));
    await registering;
    (await serviceWorker.ready).active?.postMessage('fetchIfFree');
  };
  const whenIdle = globalThis.requestIdleCallback ?? setTimeout;
  addEventListener('load', () => whenIdle(() => void start().catch(() => {})));
}
