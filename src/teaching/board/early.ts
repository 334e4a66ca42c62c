/**
 * What the board surely needs is fetched before anyone brings a sheet: once the page has been there for a moment and has
 * nothing else to do, or with the first touch, whichever is first.
 * Units: milliseconds.
 */
import { type FetchedLater, fetchWithFirstTouch } from '../../live/fetched-later.ts';

const A_MOMENT = 1500;

/** Fetches the parts, one after the other; what does not come is asked for again, and told, where it is wanted. */
export function fetchEarly(page: Document, parts: readonly FetchedLater<unknown>[]): void {
  for (const part of parts) fetchWithFirstTouch(page, part);
  const whenIdle = globalThis.requestIdleCallback ?? setTimeout;
  const fetchNext = ([next, ...rest]: readonly FetchedLater<unknown>[]): void => {
    if (!next) return;
    whenIdle(
      () =>
        void next.fetch().then(
          () => fetchNext(rest),
          () => {},
        ),
    );
  };
  setTimeout(() => fetchNext(parts), A_MOMENT);
}
