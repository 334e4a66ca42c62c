/**
 * Whether readings of a dial look like counted marks that were written down as lengths.
 * Units: SI only (m).
 * Source: common practice, no source: no band moves a dial by whole units only, mark by mark.
 */
import { isUsable } from '../known-inputs.ts';

const fewest = 3; // readings, to tell it from chance
const coarse = 20; // graduations: of the finest dial that is read in whole units, one of them has so many
const leastSpan = 200; // graduations between lowest and highest

const isWhole = (count: number): boolean => Math.abs(count - Math.round(count)) < 1e-6;

/** Whether all readings are far apart in whole multiples of many graduations, which a dial that shows lengths never is. */
export function looksLikeMarks(dials: readonly number[], graduation: number | undefined): boolean {
  if (!isUsable(graduation) || dials.length < fewest) return false;
  const counts = dials.map((dial) => dial / graduation);
  const isFar = Math.max(...counts) - Math.min(...counts) > leastSpan * (1 - 1e-6);
  return isFar && counts.every((count) => isWhole(count / coarse));
}
