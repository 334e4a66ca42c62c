/** What the one verdict on a measurement is called, why it is rough, and why a row is not used. */
import type { RoughReason, RowReason, Verdict } from '../../core/worksheet.ts';
import type { Shown } from '../state/shown.ts';

/** The verdict after “The measurement is”. */
export const VERDICTS: Readonly<Record<Verdict['grade'], string>> = {
  good: 'good',
  rough: 'rough',
  none: 'no use: the readings give no stress',
  waiting: 'not complete',
};

/** Why a measurement is rough. */
const ROUGH_REASONS: Readonly<Record<RoughReason, string>> = {
  neverStraight: 'The readings bend all the way up.',
  wideInterval: 'The zero is uncertain.',
  wideStress: 'The stress could be off by more than a quarter.',
  startsHigh: 'The lowest reading used is high up, and a bend below it does not show.',
};

/** Why a row is not used. */
export const rowReason = (reason: RowReason['reason'], { load }: Shown): string =>
  ({
    struck: 'Struck out.',
    notUsable: `Not used: the ${load.name} or the dial is missing or cannot be read.`,
    noTorque: `Not used for the line: with no ${load.name} the band hangs slack.`,
    belowDrag: `Not used: this ${load.name} only ${load.idle}.`,
  })[reason];

/** Why it is rough, as a sentence; what refuses a stress is said where that stress would stand. */
export const roughSentence = (reason: Verdict['reasons'][number]): string =>
  Object.hasOwn(ROUGH_REASONS, reason) ? ROUGH_REASONS[reason as RoughReason] : '';
