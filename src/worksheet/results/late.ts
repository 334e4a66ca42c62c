/**
 * What parts come to: fetched when one of them is opened, or with the first touch of the page, so that it is
 * there on paper.
 */
import { late } from '../kit/late.tsx';

/** The bars over the answers. */
export const LateStressAnswer = late(() => import('./StressAnswer.tsx'), 'StressAnswer');

/** What to do about a measurement that is no use. */
export const LateNoStressLead = late(() => import('../rows/TurnsLead.tsx'), 'NoStressLead');

/** What the screw should pass on. */
export const LateEfficiency = late(() => import('./FirstResults.tsx'), 'ScrewEfficiency');

/** What one graduation of the dial comes to. */
export const LateGraduation = late(() => import('./FirstResults.tsx'), 'FinenessFold');

/** What the readings come to. */
export const LateReadings = late(() => import('./AllReadings.tsx'), 'AllReadings');

/** Theory beside measurement. */
export const LateCompare = late(() => import('./CompareResults.tsx'), 'CompareResults');

/** The settings for the target and for other bands. */
export const LateSettings = late(() => import('./AllSettings.tsx'), 'AllSettings');

/** Other bands, and the words for the card. */
export const LateBands = late(() => import('../parts/BandsAndCard.tsx'), 'BandsAndCard');

/** The boxes for ways of setting, and what those come to. */
export const LateWays = late(() => import('../parts/Ways.tsx'), 'Ways');
export const LateWayResults = late(() => import('./AllWays.tsx'), 'AllWays');

/** The boxes for second opinions, and what those come to. */
export const LateSecond = late(() => import('../second/Boxes.tsx'), 'SecondBoxes');
export const LateSecondResults = late(() => import('../second/Results.tsx'), 'SecondResults');

/** The window with its boxes. */
export const LateWindow = late(() => import('../window/Boxes.tsx'), 'WindowBoxes');
const ALL = [
  LateEfficiency,
  LateGraduation,
  LateReadings,
  LateCompare,
  LateBands,
  LateWays,
  LateWayResults,
  LateSecond,
  LateSecondResults,
  LateSettings,
  LateWindow,
  LateStressAnswer,
  LateNoStressLead,
];

/** Fetches them with the first touch or key, and what else comes late. */
export function fetchWithFirstTouch(
  page: Document,
  ...others: readonly (() => Promise<unknown>)[]
): void {
  const fetch = () => {
    for (const each of ALL) void each.fetch();
    for (const other of others) other().catch(() => {}); // asked for again, and told, where it is wanted
  };
  for (const touch of ['pointerdown', 'keydown'])
    page.addEventListener(touch, fetch, { once: true, passive: true });
}
