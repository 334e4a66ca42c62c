/**
 * The first lot of repeats, counted by the build.
 * Units: m.
 * Source: repeat.ts and tally.ts beside it.
 */
import { LOT } from '../taking.ts';
import { repeatAt } from './repeat.ts';
import { tallyOf } from './tally.ts';

/** Its count. */
export const first = tallyOf(Array.from({ length: LOT }, (_, place) => repeatAt(place)));
