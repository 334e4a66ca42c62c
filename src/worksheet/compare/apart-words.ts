/**
 * What to do while theory and measurement do not agree: find out why, and go no higher until then.
 * Units: SI in, the reader's out.
 */
import { partNumber } from '../folds/sheet-parts.ts';
import type { Shown } from '../state/shown.ts';

/** What to do first, and where to look. */
export const FIND_OUT = {
  what: 'Find out first why theory and measurement disagree:',
  where: `see the checks in part ${partNumber('compare')}`,
} as const;

/** How high to go meanwhile. */
export const untilThen = (topTorque: number, { quantity, load }: Shown): string =>
  `Until then set nothing above ${quantity(topTorque, load.name)}, your highest reading.`;

/** Both as they are told of the whole sheet. */
export const apartSentence = (topTorque: number, shown: Shown): string =>
  `${FIND_OUT.what} ${FIND_OUT.where}. ${untilThen(topTorque, shown)}`;
