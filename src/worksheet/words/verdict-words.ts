/** What the one verdict on a measurement is called, why it is rough, and why a row is not used. */
import type { RoughReason, RowReason, Verdict } from '../../core/worksheet.ts';

/** The verdict in a word or two. */
export const GRADES: Readonly<Record<Verdict['grade'], string>> = {
  good: 'good',
  rough: 'rough',
  none: 'no stress',
  waiting: 'waits for more',
};

/** Why a measurement is rough. */
export const ROUGH_REASONS: Readonly<Record<RoughReason, string>> = {
  neverStraight: 'The readings bend all the way up.',
  wideInterval: 'The zero is uncertain.',
  wideStress: 'The stress could be off by more than a quarter.',
  startsHigh: 'The lowest reading used is high up, and a bend below it does not show.',
};

/** Why a row is not used. */
export const ROW_REASONS: Readonly<Record<RowReason['reason'], string>> = {
  struck: 'Struck out.',
  notUsable: 'Not used: the torque or the dial is missing or cannot be read.',
  noTorque: 'Not used for the line: with no torque the band hangs slack.',
  belowDrag: 'Not used: this torque only turns the screw.',
};
