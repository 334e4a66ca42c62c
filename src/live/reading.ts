/** Reading what is typed takes the names of all units: they come with the reader's first touch, not with the page. */
import type { parseQuantity } from '../units/reading/parse-quantity.ts';
import { fetchedLater } from './fetched-later.ts';

/** Reads a typed quantity of a kind in a unit system. */
export type Parse = typeof parseQuantity;

/** What reads typed quantities. */
export const reading = fetchedLater(
  async (): Promise<Parse> => (await import('../units/reading/parse-quantity.ts')).parseQuantity,
);
