/** Keeps the site for days without a signal, once the page has nothing else to do; the line about it comes when it is seen. */

const TOLD_AGAIN = 500; // ms

/** Tells the worker when the page is touched, so that it waits with what it still has to fetch. */
function tellTouches(registration: ServiceWorkerRegistration): void {
  let told = 0; // ms
  const tell = ({ timeStamp }: Event) => {
    if (timeStamp - told < TOLD_AGAIN) return;
    told = timeStamp;
    // never one that is to be left: it would not rest
    (registration.installing ?? registration.waiting ?? registration.active)?.postMessage(
      'touched',
    );
  };
  for (const touch of ['input', 'pointermove', 'scroll'])
    addEventListener(touch, tell, { passive: true });
}

/** Starts it where the browser can; without it the site works as long as there is a network. */
export function keepOffline(page: Document): void {
  const { serviceWorker } = navigator;
  if (!import.meta.env.PROD || !serviceWorker) return;
  let offered: Event | undefined; // to put the site on the home screen: it may come early, and comes once
  addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    offered = event;
  });
  const start = async () => {
    const registering = serviceWorker.register(`${page.body.dataset['base']}sw.js`);
    new IntersectionObserver(([foot], observer) => {
      if (!foot?.isIntersecting) return;
      observer.disconnect();
      import('./foot-line.ts').then(
        (line) => line.startLine(page, registering, offered),
        () => {}, // not arrived: the line stays empty
      );
    }).observe(page.querySelector('footer') ?? page.body);
    const registration: ServiceWorkerRegistration | undefined = await registering.catch(
      () => undefined,
    );
    if (!registration) return; // a sign-in page came in its stead, or a shield of the browser's answers with nothing
    tellTouches(registration);
    (await serviceWorker.ready).active?.postMessage('ifFree');
  };
  addEventListener('load', () => (globalThis.requestIdleCallback ?? setTimeout)(start));
}
