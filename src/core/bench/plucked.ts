/**
 * What the note of the plucked strand says on the learner's worksheet, and joined with the dial: both together.
 * Units: SI only (Pa, N·m, Hz).
 * Source: the worksheet's own second opinion and its mean.
 */
import { agreementNumber } from '../agreement.ts';
import { stressTogether } from '../worksheet/decide/both.ts';
import type { MeasuredResult } from '../worksheet/measure/measured.ts';
import { worksheetNote } from '../worksheet/second/note.ts';
import type { LevelMill } from './levels.ts';
import { type Believed, notedWorksheet } from './noted.ts';
import { benchStress } from './series.ts';

/** A stress with its 95 % interval, Pa. */
export interface Span {
  readonly stress: number;
  readonly low: number;
  readonly high: number;
}

/** A note as it was heard. */
export interface HeardNote {
  readonly torque: number; // N·m
  readonly note: number; // Hz
}

/** What it says, the truth at its torque, and the mean with the dial; none where the two disagree or are of different torques. */
export interface Plucked extends Span {
  readonly torque: number; // N·m
  readonly truth: number; // Pa
  readonly together: Span | undefined;
}

type Dial = Pick<
  MeasuredResult,
  'stress' | 'standardUncertainty' | 'expandedUncertainty' | 'topTorque'
>;

/** What a note says; undefined where no tight band sounds so. */
export function pluckedStress(
  mill: LevelMill,
  { torque, note }: HeardNote,
  believed: Believed,
  dial: Dial | undefined,
): Plucked | undefined {
  const sheet = notedWorksheet(mill, [], believed);
  const { bodyWidth } = sheet.band;
  const budget = worksheetNote({
    ...sheet,
    band: { ...sheet.band, widthOverTeeth: (bodyWidth as number) + mill.told.teeth },
    second: { ...sheet.second, torque, note, span: mill.known.centreDistance },
  });
  if (!budget.ready) return undefined;
  const { value: stress, standardUncertainty, expandedUncertainty } = budget;
  const apart = (other: Dial) =>
    agreementNumber(
      { value: stress, expanded: expandedUncertainty },
      { value: other.stress, expanded: other.expandedUncertainty },
    );
  const isJoined = dial && dial.topTorque === torque && Math.abs(apart(dial)) <= 1;
  return {
    torque,
    truth: benchStress(mill, torque),
    stress,
    low: stress - expandedUncertainty,
    high: stress + expandedUncertainty,
    together: isJoined
      ? stressTogether(dial, { stress, standardUncertainty, expandedUncertainty })
      : undefined,
  };
}
