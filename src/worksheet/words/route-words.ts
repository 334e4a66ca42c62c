/** What each route to the stress is called. */
import type { Route } from '../state/carried.ts';
import type { Shown } from '../state/shown.ts';

/** Each route to the stress in few words. */
export const routeWords = (route: Route, { load }: Shown): string =>
  ({
    predicted: `The ${load.by} predicts`,
    measured: 'You measured',
    both: 'Both together',
  })[route];
