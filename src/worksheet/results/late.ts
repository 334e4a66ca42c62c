/**
 * What parts come to: fetched when one of them is opened, or with the first touch of the page, so that it is
 * there on paper.
 */
import { late } from '../kit/late.tsx';

/** What the screw should pass on. */
export const LateEfficiency = late(() =>
  import('./FirstResults.tsx').then(({ ScrewEfficiency }) => ScrewEfficiency),
);

/** What one graduation of the dial comes to. */
export const LateGraduation = late(() =>
  import('./FirstResults.tsx').then(({ FinenessFold }) => FinenessFold),
);

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

/** The boxes for ways of setting, and what those come to. */
export const LateWays = late(() => import('../parts/Ways.tsx').then(({ Ways }) => Ways));
export const LateWayResults = late(() => import('./AllWays.tsx').then(({ AllWays }) => AllWays));

/** Fetches them with the first touch or key. */
export function fetchWithFirstTouch(page: Document): void {
  const fetch = () => {
    LateEfficiency.fetch();
    LateGraduation.fetch();
    LateReadings.fetch();
    LateCompare.fetch();
    LateWays.fetch();
    LateWayResults.fetch();
    LateSettings.fetch();
  };
  for (const touch of ['pointerdown', 'keydown'])
    page.addEventListener(touch, fetch, { once: true, passive: true });
}
