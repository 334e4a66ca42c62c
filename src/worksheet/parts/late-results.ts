/**
 * What parts come to: fetched when one of them is opened, or with the first touch of the page, so that it is
 * there on paper.
 */
import { late } from '../kit/late.tsx';

/** What the readings come to. */
export const LateReadings = late(() =>
  import('./AllReadings.tsx').then(({ AllReadings }) => AllReadings),
);

/** Theory beside measurement. */
export const LateCompare = late(() =>
  import('./CompareResults.tsx').then(({ CompareResults }) => CompareResults),
);

/** The settings for the target and for other bands. */
export const LateSettings = late(() =>
  import('./AllSettings.tsx').then(({ AllSettings }) => AllSettings),
);

/** Fetches them with the first touch or key. */
export function fetchWithFirstTouch(page: Document): void {
  const fetch = () => {
    LateReadings.fetch();
    LateCompare.fetch();
    LateSettings.fetch();
  };
  for (const touch of ['pointerdown', 'keydown'])
    page.addEventListener(touch, fetch, { once: true, passive: true });
}
