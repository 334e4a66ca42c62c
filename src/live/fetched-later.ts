/** What a page can do without until it is touched: fetched when it is first wanted, and kept. */

/** What is said where a part of the page did not come. */
export const NOT_ARRIVED = 'A part of this page did not arrive. Load the page again.';

/** Something that comes later. */
export interface FetchedLater<T> {
  /** Fetches it, once. @throws where it does not arrive; it is asked for again the next time */
  readonly fetch: () => Promise<T>;
  /** Does something with it at once, or as soon as it is there. */
  readonly use: (act: (it: T) => void, failed: () => void) => void;
}

/** Something that is fetched when it is first wanted. */
export function fetchedLater<T>(load: () => Promise<T>): FetchedLater<T> {
  let here: { readonly it: T } | undefined;
  let coming: Promise<T> | undefined;
  const fetch = () => {
    coming ??= load().then(
      (it) => {
        here = { it };
        return it;
      },
      (fault) => {
        coming = undefined;
        throw fault;
      },
    );
    return coming;
  };
  return { fetch, use: (act, failed) => (here ? act(here.it) : void fetch().then(act, failed)) };
}

/** Fetches something with the first touch or the first step of the keyboard on the page. */
export function fetchWithFirstTouch(page: Document, { fetch }: FetchedLater<unknown>): void {
  const fetchIt = () => fetch().catch(() => {}); // asked for again, and told, where it is wanted
  for (const touch of ['pointermove', 'pointerdown', 'focusin'])
    page.addEventListener(touch, fetchIt, { once: true });
}
